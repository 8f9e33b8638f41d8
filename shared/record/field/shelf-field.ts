import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import { nearestNames } from "#shared/shelf/nearest-names.ts";
import { printOutside } from "#shared/shelf/outside.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";

const namesOf = (types: readonly ShelfType[]): string[] => types.map(({ name }) => name);

function readName(text: string, types: readonly ShelfType[]): Parsed<ShelfType | null> {
  const typed = nameKey(text);
  if (typed === "") return parsed(null);
  const exact = types.find(({ name }) => nameKey(name) === typed);
  if (exact !== undefined) return parsed(exact);
  const beginning = types.filter(({ name }) => nameKey(name).startsWith(typed));
  const [only, other] = beginning;
  if (only !== undefined && other === undefined) return parsed(only);
  const names = nearestNames(text, namesOf(only === undefined ? types : beginning)).join("; ");
  return unread(only === undefined ? "shelf-name-unknown" : "shelf-name-unclear", {
    text: text.trim(),
    names,
  });
}

/** What it is called and its outside in the trade's unit: "Standard 0.035, 145 cm: 0.035 in". */
export const shelfTypeWords = ({ name, outside, sort }: ShelfType): string => {
  const size = factWords(outside, (length) => printOutside(length, sort));
  return `${name}: ${size === "unknown" ? "size unknown" : size}`;
};

/**
 * A type of the clinic's shelf, of one of these sorts, by its name in any case or by a beginning that only one of them has. Blank
 * is null: nothing chosen. Refusals: `shelf-name-unknown`, `shelf-name-unclear`, each with the nearest names.
 */
export function shelfField(
  words: FieldWords,
  sorts: readonly CoaxialSort[],
  { shelf }: Pick<FormContext, "shelf">,
): FieldSpec<ShelfType | null> {
  const types = shelf.filter(({ sort }) => sorts.includes(sort));
  return {
    ...words,
    read: (text) => readName(text, types),
    echo: (type) => (type === null ? "" : shelfTypeWords(type)),
  };
}
