import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { bySortAndSize } from "#shared/shelf/by-sort-and-size.ts";
import { shelfCells } from "#shared/shelf/shelf-cells.ts";
import { columnLabel, type ShelfColumn, shelfColumns } from "#shared/shelf/shelf-columns.ts";

type Row = Readonly<Record<ShelfColumn, string>>;

/** What is on the shelf, in the columns that the page Shelf brings in. */
export const shelfTable: CsvTable<Row> = {
  columns: Object.fromEntries(shelfColumns.map((column) => [columnLabel(column), (row: Row) => row[column]])),
  *rows(db) {
    for (const type of bySortAndSize(shelfOf(db))) yield shelfCells(type);
  },
};
