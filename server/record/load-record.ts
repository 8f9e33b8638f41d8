import { clinicOf } from "#db/queries/clinic.ts";
import { eventsOfPatient, type StoredEvent } from "#db/queries/events.ts";
import { type PatientRow, patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { booksOf } from "#server/record/books.ts";
import { toEvent } from "#server/record/stored-event.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Books } from "#shared/step/open-steps.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { joinsIn, withJoined } from "#shared/tube/join.ts";

/** Everything that decides: a patient's events and the tables that their pins point into. */
export type PatientRecord = {
  readonly patient: PatientRow;
  /** What was recorded in this record itself. */
  readonly own: readonly TubeEvent[];
  /** All that counts: its own, and the entries of records that were joined into it. */
  readonly events: readonly TubeEvent[];
  readonly books: Books;
};

/** What was recorded under one patient, wherever it counts. */
export function streamOf(db: Database, patientId: string): readonly TubeEvent[] {
  const { zone } = clinicOf(db);
  return eventsOfPatient(db, patientId).map((stored) => toEvent(stored, zone));
}

/** Loads a patient's record. Refuses an unknown id (`patient-unknown`). One that was joined into another is empty: it goes on there. */
export function loadRecord(db: Database, patientId: string): PatientRecord {
  const patient = patientById(db, patientId);
  if (patient === undefined) throw new DomainError({ code: "patient-unknown" });
  const own = patient.joinedInto === null ? streamOf(db, patientId) : [];
  const events = withJoined(own, (from) => streamOf(db, from));
  return { patient, own, events, books: booksOf(db, patient) };
}

/** The stored rows behind a record's events, in the same order. */
export function storedBehind(
  db: Database,
  { patient, own, events }: Pick<PatientRecord, "patient" | "own" | "events">,
): readonly StoredEvent[] {
  const patients = [patient.id, ...joinsIn(own).map(({ payload }) => payload.from)];
  const rows = new Map(
    patients.flatMap((id) => eventsOfPatient(db, id)).map((stored) => [stored.row.id, stored]),
  );
  return events.flatMap(({ id }) => rows.get(id) ?? []);
}
