import { addressOf, keyOf } from "#shared/protocol/rows/address.ts";
import { type RowPath, rowCalled, rowName } from "#shared/words/protocol/row-names.ts";

/** One line of the clinic's table as a screen tells it. Most rows have one; `address` says of which row it is. */
export type RowWords = { readonly word: string; readonly says: string; readonly address: string };

type Sourced = { readonly source: string };

/** "No row" is not zero, and is said. */
export const NO_ROW = "no row";

/** Which row a line is of, and its word where the row is told in several lines. */
export type LineOf = RowPath | { readonly of: RowPath; readonly word: string };

/** A row that stands alone, with its source; null is "no row". */
export function rowWords<T extends Sourced>(line: LineOf, row: T | null, says: (row: T) => string): RowWords {
  const { of, word } = typeof line === "string" ? { of: line, word: rowName(line) } : line;
  return { word, says: row === null ? NO_ROW : `${says(row)} (source ${row.source})`, address: of };
}

/** Nothing of a whole group of rows; its address is the path that theirs begin with. */
export const noRows = (group: "outputRows" | "calls" | "planning" | "visits", word: string): RowWords => ({
  word,
  says: NO_ROW,
  address: group,
});

/** Rows of one sort, each with its own line; "no row" where there is none. */
export const eachRow = <T extends Sourced>(
  path: RowPath,
  rows: readonly T[],
  says: (row: T) => string,
): readonly RowWords[] =>
  rows.length === 0
    ? [{ word: rowName(path), says: NO_ROW, address: path }]
    : rows.map((row, place) => ({
        word: rowCalled(path, true, row),
        says: `${says(row)} (source ${row.source})`,
        address: addressOf(path, keyOf(row) ?? place + 1),
      }));

/** A part of a row that may be missing, with its words round it. */
export const ifAny = <T>(value: T | null, says: (value: T) => string): string =>
  value === null ? "" : says(value);
