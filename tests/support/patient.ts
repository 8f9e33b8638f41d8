import { addIdentifier, addPatient } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import { day } from "#shared/day/day.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { searchText } from "#shared/record/patient/search-text.ts";
import type { Command } from "#shared/tube/decide.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";

/** A test database whose protocol is the example table, with one patient in it, who has no tube yet. */
export function clinicWithPatient(patientId = "patient-1"): Database & Disposable {
  const db = testDatabase();
  addInventedPatient(db, patientId, "000417");
  return db;
}

/** Nothing of it asked yet. */
const noContact: Contact = {
  telephones: [],
  alternate: null,
  homeNurse: null,
  referrer: null,
  familyDoctor: null,
  responsibleService: null,
};

export function addInventedPatient(db: Database, id: string, number: string): void {
  inTransaction(db, (tx) => {
    addPatient(tx, {
      id,
      familyName: "Brackenfold",
      givenName: "Ottoline",
      birthOn: day("1960-01-01"),
      language: "English",
      needsInterpreter: null,
      contact: noContact,
      search: searchText({
        familyName: "Brackenfold",
        givenName: "Ottoline",
        numbers: [number],
        telephones: [],
      }),
      updatedAt: SEEDED_AT,
      withdrawnAt: null,
      joinedInto: null,
    });
    addIdentifier(tx, { patientId: id, place: 1, issuer: "clinic", value: number });
  });
}

/** Records commands as one act of the nurse, as a form would. */
export const recordAs = (
  db: Database,
  commands: readonly Command[],
  patientId = "patient-1",
): readonly TubeEvent[] => {
  const actId = newId();
  return inAct({ db, staff: people.nurse, actId, command: "test", input: actId }, (tx, at) =>
    append(tx, { patientId, actId, staffId: people.nurse.id, at }, commands),
  ) as readonly TubeEvent[];
};
