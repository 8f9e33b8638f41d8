import { findPatients } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { searchText } from "#server/patients/search-text.ts";

const SHOWN = 20;

/** Patients by part of a name or record number. Nothing typed finds nobody. */
export function findPatient(db: Database, typed: string) {
  const text = searchText(typed);
  return text === "" ? [] : findPatients(db, text, SHOWN);
}
