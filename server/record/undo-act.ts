import { actById } from "#db/queries/acts.ts";
import {
  addPatientChange,
  patientsOpenedIn,
  replaceIdentifiers,
  updatePatient,
} from "#db/queries/patients.ts";
import { tubeById } from "#db/queries/projections.ts";
import { addReading, readingsOfAct } from "#db/queries/readings.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { voidingRow } from "#server/output/stored-reading.ts";
import { detailsOf } from "#server/patients/correct-patient.ts";
import { append } from "#server/record/append.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { UNDONE, voidingsOfAct } from "#server/record/voidings-of-act.ts";
import { undoOnShelf } from "#server/shelf/undo-on-shelf.ts";
import { mayUndo } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { fold } from "#shared/tube/fold.ts";
import { joinsIn } from "#shared/tube/join.ts";

type UndoneBy = { readonly db: Doing["db"]; readonly staff: Pick<Person, "id" | "role"> };

export type Undoing = { readonly actId: string; readonly undoes: string };

function undoEvents(tx: Tx, undoes: string, by: { actId: string; staffId: string; at: Instant }): number {
  const voidings = voidingsOfAct(tx, undoes);
  for (const [patientId, commands] of voidings) append(tx, { patientId, ...by }, commands);
  return [...voidings.values()].flat().length;
}

/** Voids what the act logged, then computes the steps of whoever has those tubes now. */
function undoReadings(tx: Tx, undoes: string, by: { actId: string; staffId: string; at: Instant }): number {
  const { actId, staffId: recordedBy, at: recordedAt } = by;
  const rows = readingsOfAct(tx, undoes);
  for (const row of rows) {
    const { patientId } = row;
    addReading(tx, voidingRow(newId(), row, { patientId, actId, recordedAt, recordedBy, reason: UNDONE }));
  }
  const patients = rows.flatMap(({ tubeId }) => tubeById(tx, tubeId)?.patientId ?? []);
  for (const patientId of new Set(patients)) append(tx, { patientId, ...by }, []);
  return rows.length;
}

/**
 * Withdraws the records that an act opened and under which nothing stands any more: found by nobody, their numbers free again. A
 * record with entries of others stays.
 */
function withdrawRecords(tx: Tx, undoes: string, { actId, at }: { actId: string; at: Instant }): number {
  const opened = patientsOpenedIn(tx, undoes)
    .filter(({ joinedInto }) => joinedInto === null)
    .filter((row) => isBare(loadRecord(tx, row.id)));
  for (const row of opened) {
    const before = detailsOf(tx, row);
    updatePatient(tx, { ...row, search: "", updatedAt: at, withdrawnAt: at });
    replaceIdentifiers(tx, row.id, []);
    const after = { ...before, identifiers: [] };
    addPatientChange(tx, { id: newId(), patientId: row.id, actId, before, after, at });
  }
  return opened.length;
}

/** No tube, nothing known, nothing to reconcile, no other record that goes on in this one. */
function isBare({ own, events }: PatientRecord): boolean {
  const { tubes, conditions, died, whereabouts, reconciles } = fold(events);
  const said = tubes.length + reconciles.length + Object.keys(conditions).length + joinsIn(own).length;
  return said === 0 && died === null && whereabouts === null;
}

/** Takes back everything that one act recorded, as one amendment of that act; both stay in the story. */
export function undoAct({ db, staff }: UndoneBy, input: Undoing): { undone: number } {
  const { actId, undoes } = input;
  return inAct({ db, staff, actId, command: "undo", input }, (tx, at) => {
    const act = actById(tx, undoes);
    if (act === undefined) throw new DomainError({ code: "nothing-to-undo" });
    if (!mayUndo(staff, act.staffId)) throw new DomainError({ code: "not-allowed" });
    const events = undoEvents(tx, undoes, { actId, staffId: staff.id, at });
    const readings = undoReadings(tx, undoes, { actId, staffId: staff.id, at });
    const undone =
      events +
      readings +
      withdrawRecords(tx, undoes, { actId, at }) +
      undoOnShelf(tx, undoes, { actId, at, staff });
    if (undone === 0) throw new DomainError({ code: "nothing-to-undo" });
    return { undone };
  });
}
