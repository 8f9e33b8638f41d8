import { clinicOf } from "#db/queries/clinic.ts";
import { eventsOfPatient } from "#db/queries/events.ts";
import { type PatientRow, patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { booksOf } from "#server/record/books.ts";
import { toEvent } from "#server/record/stored-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Books } from "#shared/step/open-steps.ts";
import type { TubeEvent } from "#shared/tube/event.ts";

/** Everything that decides: a patient's events and the tables that their pins point into. */
export type PatientRecord = {
  readonly patient: PatientRow;
  readonly events: readonly TubeEvent[];
  readonly books: Books;
};

/** Loads a patient's stream. Refuses an unknown id (`patient-unknown`). */
export function loadRecord(db: Database, patientId: string): PatientRecord {
  const patient = patientById(db, patientId);
  if (patient === undefined) throw new DomainError({ code: "patient-unknown" });
  const { zone } = clinicOf(db);
  const events = eventsOfPatient(db, patientId).map((stored) => toEvent(stored, zone));
  return { patient, events, books: booksOf(db, patient.birthOn) };
}
