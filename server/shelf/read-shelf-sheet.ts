import type { Database } from "#db/sqlite.ts";
import { readSheetOf } from "#server/sheet/read-sheet.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Encoding } from "#shared/sheet/encoding.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";
import { columnsOf, isShelfHeading } from "#shared/shelf/shelf-columns.ts";
import { type ShelfStanding, standRows } from "#shared/shelf/stand-rows.ts";

export type ShelfSheet = {
  readonly bytes: Uint8Array;
  /** Null: found by its marks. */
  readonly encoding: Encoding | null;
};

/** How a sheet stands beside the shelf. Headings that nothing is read from are named, so that nothing is left out in silence. */
export type StandingSheet = {
  readonly sheet: Sheet;
  readonly leftOut: readonly string[];
  readonly rows: readonly ShelfStanding[];
};

/**
 * Reads a file or a pasted block beside the shelf as it is now. Nothing is written. Throws what `readSheetOf` and `columnsOf` refuse.
 */
export function readShelfSheet(db: Database, { bytes, encoding }: ShelfSheet): StandingSheet {
  const sheet = readSheetOf(isShelfHeading, bytes, encoding);
  const columns = columnsOf(sheet.headings);
  if (!columns.ok) throw new DomainError(columns.refusal);
  const reading = { headings: sheet.headings, columns: columns.value, shelf: shelfOf(db) };
  return {
    sheet,
    leftOut: sheet.headings.filter((_, at) => columns.value[at] === null),
    rows: standRows(sheet.rows, reading),
  };
}
