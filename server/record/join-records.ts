import { clinicOf } from "#db/queries/clinic.ts";
import { appendEvent } from "#db/queries/events.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { writeProjection } from "#server/record/append.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { setJoined } from "#server/record/part-records.ts";
import type { Doing, RecordedAct } from "#server/record/record-event.ts";
import { toStored } from "#server/record/stored-event.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import type { Joining } from "#shared/record/act.ts";
import { joinForm } from "#shared/record/patient/join-form.ts";
import { fold } from "#shared/tube/fold.ts";
import { type Join, joinsIn, numberedAnew } from "#shared/tube/join.ts";

type Both = { readonly stays: PatientRecord; readonly other: PatientRecord };

/** Two records of their own, neither of them withdrawn, the other without a third in it: no chains. */
function joinRefusal({ stays, other }: Both): Refusal | null {
  if (stays.patient.id === other.patient.id) return { code: "joins-itself" };
  const patients = [stays.patient, other.patient];
  if (patients.some(({ withdrawnAt }) => withdrawnAt !== null)) return { code: "patient-unknown" };
  if (patients.some(({ joinedInto }) => joinedInto !== null)) return { code: "joined-already" };
  return joinsIn(other.own).length > 0 ? { code: "others-joined" } : null;
}

/** The entry of the joining, after everything that both records say. */
function joining(tx: Tx, { stays, other }: Both, { how, at }: { how: string; at: Instant }): Join {
  const here = fold(stays.events);
  const there = fold(other.events);
  const offset = here.lastSeq;
  const today = dayAt(at, clinicOf(tx).zone);
  return {
    id: newId(),
    seq: offset + there.lastSeq + 1,
    kind: "records joined",
    when: onDay(today),
    time: null,
    daySequence: 0,
    recordedOn: today,
    tubes: [],
    pins: null,
    amends: null,
    payload: { from: other.patient.id, offset, numbers: numberedAnew(here.tubes, there.tubes), how },
  };
}

/**
 * Joins another record of the same person into this one: its tubes and entries count here from now on, and it takes no more. What
 * both say may disagree; each disagreement is then a step of this record, not a refusal. Undone like any act.
 */
export function joinRecords({ db, staff }: Doing, input: Joining): RecordedAct {
  const { actId, patientId, otherId, texts } = input;
  return inAct({ db, staff, actId, command: "record: records joined", input }, (tx, at) => {
    const read = joinForm.read(texts);
    if (!read.ok) throw new DomainError(read.refusals);
    const both = { stays: loadRecord(tx, patientId), other: loadRecord(tx, otherId) };
    const refused = joinRefusal(both);
    if (refused !== null) throw new DomainError(refused);
    const event = joining(tx, both, { how: read.entry.how, at });
    const { zone } = clinicOf(tx);
    appendEvent(tx, toStored(event, { patientId, actId, recordedAt: at, recordedBy: staff.id, zone }));
    setJoined(tx, { patientId: otherId, joinedInto: patientId }, { actId, at });
    // The other gives its tubes up before this one takes them.
    for (const id of [otherId, patientId]) writeProjection(tx, loadRecord(tx, id));
    return { actId, patientId, tubeId: null, eventIds: [event.id], typed: texts };
  });
}
