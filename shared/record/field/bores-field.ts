import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Bore, Place } from "#shared/fit/inside.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { printSize } from "#shared/record/field/length-field.ts";
import { matchWord, type Word } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { readLength } from "#shared/size/read-length.ts";
import { known } from "#shared/tube/certainty.ts";

const placeWords: readonly Word<Place>[] = [
  { value: "stopcock", words: ["stopcock", "cock", "tap"] },
  { value: "hub", words: ["hub"] },
  { value: "valve", words: ["valve"] },
  { value: "shaft", words: ["shaft"] },
  { value: "end hole", words: ["end hole", "endhole", "tip", "hole"] },
];

/** A comma before a letter parts two places; before a digit it may be a decimal comma. */
const BETWEEN = /\s*(?:;|,(?=\s*\p{L}))\s*/u;
const PLACE_FIRST = /^([\p{L} ]*\p{L})\s*(.*)$/su;
const TOLERANCE = /^(.*?)\s*(?:\+\/?-|±)\s*(.+)$/s;

function readBore(text: string): Parsed<Bore> {
  const [, place = "", sizes = ""] = PLACE_FIRST.exec(text) ?? [];
  if (place === "" || sizes === "") return unread("bores-not-understood", { text });
  const at = matchWord(place, placeWords);
  if (!at.ok) return at;
  const [, size = sizes, give] = TOLERANCE.exec(sizes) ?? [];
  const inside = readLength(size, { thing: "bore", bare: "refuse" });
  if (!inside.ok) return inside;
  if (give === undefined) return parsed({ place: at.value, inside: inside.value, tolerance: null });
  const tolerance = readLength(give, { thing: "bore tolerance", bare: "refuse" });
  if (!tolerance.ok) return tolerance;
  return parsed({ place: at.value, inside: inside.value, tolerance: known(tolerance.value) ?? null });
}

function readBores(text: string): Parsed<readonly Bore[] | undefined> {
  const typed = text.split(BETWEEN).filter((part) => part.trim() !== "");
  if (typed.length === 0) return parsed(undefined);
  const bores: Bore[] = [];
  for (const part of typed) {
    const bore = readBore(part.trim());
    if (!bore.ok) return bore;
    if (bores.some(({ place }) => place === bore.value.place)) return unread("choice-repeated");
    bores.push(bore.value);
  }
  return parsed(bores);
}

function printBore({ place, inside, tolerance }: Bore): string {
  const give = tolerance === null ? "" : ` ± ${printSize("bore tolerance", tolerance)}`;
  return `${place} ${factWords(inside, (length) => printSize("bore", length))}${give}`;
}

/** Measured insides as one line: "hub 2.0 mm, shaft 1.9 mm, end hole .038 in"; "+-0.05 mm" after a size is its tolerance. */
export const boresField = (words: FieldWords): FieldSpec<readonly Bore[] | undefined> => ({
  ...words,
  read: readBores,
  echo: (bores) => bores?.map(printBore).join(", ") ?? "",
});
