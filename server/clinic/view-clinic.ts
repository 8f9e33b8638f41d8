import { clinicChangesNewest, clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";

/** Changes that are shown; all of them stand in the export. */
const SHOWN = 50;

/** What the clinic says of itself on its papers, and who changed it when, the newest first. */
export function viewClinic(db: Database) {
  const { name, zone, phone } = clinicOf(db);
  return { name, zone, phone, changes: clinicChangesNewest(db, SHOWN) };
}
