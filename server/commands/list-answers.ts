import type { ColumnOption, ListOptions } from "#server/commands/list-options.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { type Answers, LEFT_OUT } from "#shared/sheet/answers.ts";
import { heading } from "#shared/sheet/heading.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";
import { isRepeatable, labelOf, sheetFields } from "#shared/sheet/sheet-fields.ts";

type Column = Answers["columns"][number];

function columnCalled(says: string): Column {
  const typed = heading(says);
  if (typed === LEFT_OUT) return LEFT_OUT;
  const found = sheetFields.find((field) => heading(labelOf(field)) === typed);
  if (found !== undefined) return found;
  const choices = [...sheetFields.map(labelOf), LEFT_OUT].join(", ");
  throw new DomainError({ code: "word-unknown", args: { text: says, choices } });
}

function placeOf({ headings }: Sheet, { heading: typed }: ColumnOption): number {
  const place = headings.findIndex((title) => heading(title) === heading(typed));
  if (place >= 0) return place;
  throw new DomainError({
    code: "column-unknown",
    args: { heading: typed, headings: headings.join(", ") },
  });
}

/** The suggested columns with those that were named; what a named column says is no longer suggested of another. */
function columnsOf(sheet: Sheet, suggested: Answers["columns"], named: readonly ColumnOption[]) {
  const said = new Map(named.map((option) => [placeOf(sheet, option), columnCalled(option.says)]));
  const taken = [...said.values()];
  return suggested.map(
    (field, place): Column =>
      said.get(place) ??
      (field !== LEFT_OUT && !isRepeatable(field) && taken.includes(field) ? LEFT_OUT : field),
  );
}

/**
 * What the command was told of a list, over what is suggested. Throws `column-unknown` for a heading that the list does not have,
 * and `word-unknown` for something that no column can say.
 */
export const listAnswers = (sheet: Sheet, suggested: Answers, options: ListOptions): Answers => ({
  columns: columnsOf(sheet, suggested.columns, options.columns),
  dateOrder: options.dateOrder,
  nameOrder: options.nameOrder,
  issuer: options.issuer ?? suggested.issuer,
});
