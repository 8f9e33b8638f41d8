import { parsed } from "#shared/errors/refusal.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";
import { type LengthField, readLength } from "#shared/size/read-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** The trade's unit first, millimetres beside it; lengths along the tube in centimetres alone. */
const printers = {
  "tube outside": (length) => printBoth(length, "F", "mm"),
  wire: (length) => printBoth(length, "in", "mm"),
  takes: (length) => printBoth(length, "in", "mm"),
  bore: (length) => printBoth(length, "mm", "in"),
  "bore tolerance": (length) => printBoth(length, "mm", "in"),
  "tube length": (length) => printLength(length, "cm"),
  "wire length": (length) => printLength(length, "cm"),
  "external length": (length) => printLength(length, "cm"),
} as const satisfies Record<LengthField["thing"], (length: Length) => string>;

/** A bare number means centimetres where the label says so; bores and outsides need their unit. */
const bareUnits: Partial<Record<LengthField["thing"], LengthUnit>> = {
  "tube length": "cm",
  "wire length": "cm",
  "external length": "cm",
};

export const printSize = (thing: LengthField["thing"], length: Length): string => printers[thing](length);

/** A size that has to be typed, though "?" will do. */
export const lengthField = (words: FieldWords, thing: LengthField["thing"]): FieldSpec<Fact<Length>> => ({
  ...words,
  read: (text) => readLength(text, { thing, bare: bareUnits[thing] ?? "refuse" }),
  echo: (fact) => factWords(fact, printers[thing]),
});

/** The same where a blank says nothing. */
export function optionalLengthField(
  words: FieldWords,
  thing: LengthField["thing"],
): FieldSpec<Fact<Length> | undefined> {
  const { read, echo } = lengthField(words, thing);
  return {
    ...words,
    read: (text) => (text.trim() === "" ? parsed(undefined) : read(text)),
    echo: (fact) => (fact === undefined ? "" : (echo?.(fact) ?? "")),
  };
}
