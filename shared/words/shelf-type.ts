import type { Bore } from "#shared/fit/inside.ts";
import { printOutside } from "#shared/shelf/outside.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import { toldByOthers } from "#shared/shelf/type-texts.ts";
import type { Length } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

const UNKNOWN = "unknown";

/** "about 8 F"; what was told by others says so once, for the whole type. */
function words<T>(fact: Fact<T>, print: (value: T) => string): string | null {
  if (fact.certainty === "unknown") return null;
  return fact.certainty === "estimated" ? `about ${print(fact.value)}` : print(fact.value);
}

const give = (tolerance: Length | null): string =>
  tolerance === null ? "" : ` ± ${printExactly(tolerance, ["mm", "in"])}`;

/** In the unit in which it was measured: an end hole in inches stands beside wires in inches. */
const boreWords = ({ place, inside, tolerance }: Bore): string =>
  `${place} ${words(inside, (length) => printExactly(length, ["mm", "in"])) ?? UNKNOWN}${give(tolerance)}`;

function takesWords({ sort, takes, takesDevice }: NewShelfType): string {
  if (sort === "wire") return "";
  const said = [
    words(takes, (length) => `wire ${printLength(length, "in")}`),
    words(takesDevice, (length) => `device ${printLength(length, "F")}`),
  ].filter((each) => each !== null);
  return said.join(", ") || UNKNOWN;
}

/** The type, cell by cell, as the shelf shows it. Blank is what its sort does not have; what nobody knows says so. */
export function typeWords(type: NewShelfType) {
  const { sort, name, outside, tolerance, bores, endHole, length, retention, kinds } = type;
  const isTube = sort === "tube";
  const size = words(outside, (of) => printOutside(of, sort));
  return {
    name,
    sort,
    outside: size === null ? UNKNOWN : `${size}${give(tolerance)}`,
    takes: takesWords(type),
    insides: bores.map(boreWords).join(", ") || (sort === "wire" ? "" : UNKNOWN),
    length: words(length, (of) => printLength(of, "cm")) ?? UNKNOWN,
    endHole: sort === "wire" || sort === "needle" ? "" : (words(endHole, String) ?? UNKNOWN),
    retention: isTube ? (words(retention, String) ?? UNKNOWN) : "",
    kinds: isTube ? kinds.map((kind) => kindOf(kind).name).join(", ") || "any" : "",
    known: toldByOthers(type) ? "reported" : "confirmed",
  };
}

export type TypeWords = ReturnType<typeof typeWords>;
