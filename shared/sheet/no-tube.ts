import { type Answers, LEFT_OUT } from "#shared/sheet/answers.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import type { SheetField } from "#shared/sheet/sheet-fields.ts";

/** What a list or a printed page writes under its rows (practice, no source), the whole cell: "Page, Emma" is somebody. */
const UNDER_A_LIST = [
  /^(?:(?:grand|sub) ?)?(?:totals?|sum|count)(?: (?:of|in|no|number|rows?|tubes?|drains?|patients?|list|all|\d+))*$/,
  /^\d+ (?:rows?|tubes?|drains?|patients?)$/,
  /^page \d+(?: (?:of )?\d+)?$/,
  /^(?:printed|exported|saved) (?:on|at|by|from)\b/,
  /^end of (?:the )?(?:list|report|page)$/,
];

/** More filled cells than these say something of somebody. */
const MOST_FILLED = 2;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

const isUnder = (text: string): boolean => UNDER_A_LIST.some((words) => words.test(plain(text)));

const namesOrKind: readonly (SheetField | typeof LEFT_OUT)[] = [
  "wholeName",
  "familyName",
  "givenName",
  "kind",
];

type Said = { readonly field: SheetField | typeof LEFT_OUT; readonly text: string };

/** A record number is somebody's, and so is any word where a name or a kind of tube stands. */
const isSomebodys = ({ field, text }: Said): boolean =>
  field === "number" || (namesOrKind.includes(field) && /\p{L}/u.test(text));

/**
 * Whether a line is no row of a tube: a total, the number of a page, when it was printed. Only where at most two cells are filled, one
 * of them with such words alone, and the other is no record number, no name and no kind of tube.
 */
export function isNoTube({ cells }: SheetLine, { columns }: Pick<Answers, "columns">): boolean {
  const said = cells
    .map((cell, index): Said => ({ field: columns[index] ?? LEFT_OUT, text: cell.trim() }))
    .filter(({ text }) => text !== "");
  const others = said.filter(({ text }) => !isUnder(text));
  return said.length <= MOST_FILLED && others.length < said.length && !others.some(isSomebodys);
}
