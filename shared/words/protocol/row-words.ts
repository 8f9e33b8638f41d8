/** One row of the clinic's table as a screen tells it. */
export type RowWords = { readonly word: string; readonly says: string };

type Sourced = { readonly source: string };

/** "No row" is not zero, and is said. */
export const NO_ROW = "no row";

/** A row with its source; null is "no row". */
export const rowWords = <T extends Sourced>(
  word: string,
  row: T | null,
  says: (row: T) => string,
): RowWords => ({
  word,
  says: row === null ? NO_ROW : `${says(row)} (source ${row.source})`,
});

/** Rows of one sort, each with its own line; "no row" where there is none. */
export const eachRow = <T extends Sourced>(
  word: string,
  rows: readonly T[],
  { of, says }: { readonly of: (row: T) => string; readonly says: (row: T) => string },
): readonly RowWords[] =>
  rows.length === 0
    ? [{ word, says: NO_ROW }]
    : rows.map((row) => rowWords(`${word}: ${of(row)}`, row, says));

/** "nephrostomy, suprapubic catheter"; of an empty list: any. */
export const kindsOf = ({ kinds }: { readonly kinds: readonly string[] }): string =>
  kinds.length === 0 ? "any" : kinds.join(", ");

/** A part of a row that may be missing, with its words round it. */
export const ifAny = <T>(value: T | null, says: (value: T) => string): string =>
  value === null ? "" : says(value);
