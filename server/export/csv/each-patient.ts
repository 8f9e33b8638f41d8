import { patientIds } from "#db/queries/patient-list.ts";
import type { Database } from "#db/sqlite.ts";
import { type PatientView, viewPatient } from "#server/patients/view-patient.ts";

/** Everybody who is registered as their own page shows them, one after the other. */
export function* eachPatient(db: Database): Generator<PatientView> {
  for (const id of patientIds(db)) yield viewPatient(db, id);
}
