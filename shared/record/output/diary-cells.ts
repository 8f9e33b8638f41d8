import type { Texts } from "#shared/record/field-spec.ts";

/** As many emptyings as one diary takes; a longer one is logged in two. */
export const DIARY_ROWS = 20;
/** The rows of a diary, from 1. */
export const diaryRows: readonly number[] = Array.from({ length: DIARY_ROWS }, (_, index) => index + 1);

/** What a row says, in the order in which it is typed. */
export const cells = ["when", "drained", "flush", "characters", "leak", "otherIn"] as const;
/** Those that most diaries do without: they are asked for, so that no Tab goes over them. */
export const rareCells = ["leak", "otherIn"] as const satisfies readonly DiaryCell[];
export type DiaryCell = (typeof cells)[number];
/** What stands in one row. */
export type DiaryRow = Readonly<Record<DiaryCell, string>>;

/** The name of a cell's field: "when3". */
export const cellName = (cell: DiaryCell, row: number): string => `${cell}${row}`;

const NAME = new RegExp(`^(${cells.join("|")})(\\d+)$`);

/** The row and the cell that a name speaks of; undefined for what is said once for all. */
export const rowOfCell = (name: string): number | undefined => {
  const [, , row] = NAME.exec(name) ?? [];
  return row === undefined ? undefined : Number(row);
};
export const cellOfName = (name: string): DiaryCell | undefined =>
  cells.find((cell) => cell === NAME.exec(name)?.[1]);

export const namesOfRow = (row: number): readonly string[] => cells.map((cell) => cellName(cell, row));

/** What stands in a row. */
export function rowIn(texts: Texts, row: number): DiaryRow {
  const textOf = (cell: DiaryCell): string => texts[cellName(cell, row)] ?? "";
  return {
    when: textOf("when"),
    drained: textOf("drained"),
    flush: textOf("flush"),
    characters: textOf("characters"),
    leak: textOf("leak"),
    otherIn: textOf("otherIn"),
  };
}

/** A row in which anything stands. */
export const isUsed = (texts: Texts, row: number): boolean =>
  namesOfRow(row).some((name) => (texts[name] ?? "").trim() !== "");

/** A row of a diary in which something rare is said. */
export const saysRare = (texts: Texts, row: number): boolean =>
  rareCells.some((cell) => (texts[cellName(cell, row)] ?? "").trim() !== "");

/** The flush that is said once for all rows. */
export const EACH = "flushEach";
/** What was pasted and does not stand in the rows yet. */
export const PASTED = "pasted";

/** The cell that says what a field of a reading by itself says. */
export function cellOf(field: string): DiaryCell {
  if (field === "to" || field === "from") return "when";
  return field === "flushGiven" ? "flush" : (cells.find((cell) => cell === field) ?? "when");
}
