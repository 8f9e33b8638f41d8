import { clinicOf } from "#db/queries/clinic.ts";
import { sheetBatchesNewest, waitingSheets } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";

const SHOWN = 50;

/** The lists that wait and those that were brought in, the newest first. */
export const listSheets = (db: Database) => ({
  zone: clinicOf(db).zone,
  waiting: waitingSheets(db, SHOWN),
  broughtIn: sheetBatchesNewest(db, SHOWN),
});
