import { recordsAlike, recordsWithNumber } from "#db/queries/other-records.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";

const SHOWN = 20;

export type OtherRecordsAsked = {
  readonly patientId: string;
  /** A whole record number; blank asks for records alike by name or birth date. */
  readonly number: string;
};

/** Records that may be the same person's: by the number typed, else by the same birth date or the same names. */
export function otherRecords(db: Database, { patientId, number }: OtherRecordsAsked) {
  const typed = number.trim();
  const rows = typed === "" ? recordsAlike(db, patientId, SHOWN) : recordsWithNumber(db, patientId, typed);
  return rows.map((row) => ({ ...row, identifiers: identifiersOf(db, row.id) }));
}
