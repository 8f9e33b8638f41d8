import * as z from "zod";

/** Most columns, rows and characters of a cell that a clinic's list has; more is another kind of file. */
export const MOST_COLUMNS = 100;
export const MOST_ROWS = 20_000;
export const MOST_IN_CELL = 2000;

/** One line as the spreadsheet numbers it, with its cells as text. */
export type SheetLine = { readonly row: number; readonly cells: readonly string[] };

const line = z.strictObject({ row: z.int().min(1), cells: z.array(z.string()) });

/** A clinic's list: one line of headings, and the rows below it, each as wide as the headings. */
export const sheetSchema = z.strictObject({
  headings: z.array(z.string()),
  rows: z.array(line),
  /** Lines below the headings that only repeat them, as a printed list does on each page. */
  repeated: z.array(z.int()),
});
export type Sheet = Readonly<z.infer<typeof sheetSchema>>;
