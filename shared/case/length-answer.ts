import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import { type Telling, told } from "#shared/case/telling.ts";
import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import { lengthField, printSize } from "#shared/record/field/length-field.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import { readNeedle } from "#shared/size/read-needle.ts";
import { statedOuter } from "#shared/size/stated-size.ts";
import type { Fact } from "#shared/tube/certainty.ts";

type Asked = Given<"length">;

function readTyped({ thing, typed }: Asked): Parsed<Fact<Length>> {
  if (thing !== "needle outside") return lengthField({ label: "" }, thing).read(typed);
  const needle = readNeedle(typed);
  return needle.ok ? parsed(needle.value.outside) : needle;
}

const printed = (thing: Asked["thing"], length: Length): string =>
  thing === "needle outside" ? printBoth(length, "mm", "in") : printSize(thing, length);

/** What a package states of that outside, and what the tube in it may measure. */
function statedWords(length: Length): Json {
  const { stated, least, most } = statedOuter(length);
  return { mm: printLength(stated, "mm"), least: printLength(least, "mm"), most: printLength(most, "mm") };
}

/** A typed size, as its field reads it and prints it again, and the same length in every unit. */
export function lengthAnswer(given: Asked): Telling<Json> {
  const read = readTyped(given);
  if (!read.ok) return { kind: "refused", entry: null, refusals: [read.refusal] };
  const { certainty } = read.value;
  if (read.value.certainty === "unknown") return told({ certainty });
  const length = read.value.value;
  return told({
    certainty,
    printed: printed(given.thing, length),
    F: printLength(length, "F"),
    mm: printLength(length, "mm"),
    in: printLength(length, "in"),
    cm: printLength(length, "cm"),
    ...(given.thing === "tube outside" && { stated: statedWords(length) }),
  });
}
