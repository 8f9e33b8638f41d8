import type { Texts } from "#shared/record/field-spec.ts";
import {
  cellName,
  DIARY_ROWS,
  type DiaryCell,
  type DiaryRow,
  diaryRows,
  isUsed,
} from "#shared/record/output/diary-cells.ts";
import { asSeen } from "#shared/record/output/diary-seen.ts";

/** Where pasted rows go: from this row on, and a column of figures alone into this cell. */
export type FillAt = { readonly row: number; readonly cell: DiaryCell };

/** The cells that change, and the pasted rows for which there was no room. */
export type Filled = { readonly texts: Texts; readonly over: readonly DiaryRow[] };

const NEXT_DAY = "+1";

/** The first row in which nothing stands; after the last where something stands in each. */
export const firstFreeRow = (texts: Texts): number =>
  diaryRows.find((row) => !isUsed(texts, row)) ?? DIARY_ROWS + 1;

/** Rows of one figure each and of nothing else. */
const isColumn = (rows: readonly DiaryRow[]): boolean =>
  rows.every(({ drained: _figure, ...others }) => Object.values(others).every((text) => text === ""));

/**
 * Puts pasted rows into a diary. A blank pasted cell leaves what stands there. Figures in a column, without times, are one a day: each
 * goes to the time that its row has, or else to the same time a day after the row before.
 */
export function fillDiary(texts: Texts, pasted: readonly DiaryRow[], { row: first, cell }: FillAt): Filled {
  const column = isColumn(pasted);
  const fitting = pasted.slice(0, DIARY_ROWS + 1 - first);
  const filled: Record<string, string> = {};
  for (const [index, given] of fitting.entries()) {
    const row = first + index;
    const put = (into: DiaryCell, text: string): void => {
      if (text !== "") filled[cellName(into, row)] = text;
    };
    put("flush", given.flush);
    put("characters", given.characters);
    put("leak", given.leak);
    put("otherIn", given.otherIn);
    put(column ? cell : "drained", given.drained);
    const timed = cell === "when" || (texts[cellName("when", row)] ?? "").trim() !== "";
    if (!column) put("when", given.when);
    else if (!timed && row > 1) put("when", NEXT_DAY);
  }
  return { texts: filled, over: pasted.slice(fitting.length) };
}

/** A row as it was pasted, to be put in elsewhere. */
export const asPasted = ({ when, drained, flush, characters, leak, otherIn }: DiaryRow): string =>
  [when, drained, flush, characters, ...asSeen({ leak, otherIn })].join("\t");
