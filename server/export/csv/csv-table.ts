import Papa from "papaparse";
import type { Database } from "#db/sqlite.ts";
import { RUNS_OR_GUARDED } from "#shared/sheet/guard.ts";

type Cell = string | number;

/** A table as a spreadsheet opens it: each column by its head, in their order, and where its rows come from. */
export type CsvTable<Row> = {
  readonly columns: Readonly<Record<string, (row: Row) => Cell>>;
  readonly rows: (db: Database) => Iterable<Row>;
};

/** Spreadsheets take UTF-8 for something older without it. */
export const BYTE_ORDER_MARK = "\u{feff}";

/** One line by RFC 4180. The pattern of what is guarded is ours: the library's own ends at the first line of a text. */
export const csvLine = (cells: readonly Cell[]): string =>
  `${Papa.unparse([cells], { newline: "\r\n", escapeFormulae: RUNS_OR_GUARDED })}\r\n`;

/** The lines of the table by RFC 4180, its heads first. Text that a spreadsheet would run gets an apostrophe before it. */
export function* csvLines<Row>({ columns, rows }: CsvTable<Row>, db: Database): Generator<string> {
  yield BYTE_ORDER_MARK + csvLine(Object.keys(columns));
  const cells = Object.values(columns);
  for (const row of rows(db)) yield csvLine(cells.map((cell) => cell(row)));
}
