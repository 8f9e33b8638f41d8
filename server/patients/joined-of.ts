import { identifiersOf, patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import type { PatientRecord } from "#server/record/load-record.ts";
import { joinsIn } from "#shared/tube/join.ts";

const namedOf = (db: Database, patientId: string) => {
  const patient = patientById(db, patientId);
  if (patient === undefined) return [];
  const { id, familyName, givenName, birthOn } = patient;
  return [{ id, familyName, givenName, birthOn, identifiers: identifiersOf(db, id) }];
};

/** The other records of this person: the one in which this goes on, and those that go on in this one. */
export function joinedOf(db: Database, { patient, own }: Pick<PatientRecord, "patient" | "own">) {
  const [into = null] = patient.joinedInto === null ? [] : namedOf(db, patient.joinedInto);
  return { into, from: joinsIn(own).flatMap(({ payload }) => namedOf(db, payload.from)) };
}
