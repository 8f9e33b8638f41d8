import { clinicOf } from "#db/queries/clinic.ts";
import { appendEvent } from "#db/queries/events.ts";
import { replaceProjection } from "#db/queries/projections.ts";
import type { Tx } from "#db/transaction.ts";
import { clinicNow, type Decided, decideEach } from "#server/record/decide-each.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { partRecords } from "#server/record/part-records.ts";
import { passFromClosed } from "#server/record/pass-from-closed.ts";
import { projectionFrom } from "#server/record/project.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { toStored } from "#server/record/stored-event.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import type { Command } from "#shared/tube/decide.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";

/** In which act, by whom and at which instant something is recorded. */
export type Recording = {
  readonly patientId: string;
  readonly actId: string;
  readonly staffId: string;
  readonly at: Instant;
};

/** Computes a patient's tubes and open steps from events, and writes them in place of what stood. */
export function writeProjection(tx: Tx, record: Pick<PatientRecord, "patient" | "events" | "books">): void {
  const state = fold(record.events);
  const steps = openSteps(state, record.books);
  replaceProjection(tx, record.patient.id, projectionFrom(record.patient.id, state, steps));
}

function must(decided: Decided): Extract<Decided, { readonly ok: true }> {
  if (!decided.ok) throw new DomainError(decided.refusals);
  return decided;
}

/**
 * Load, decide, append, project: all events of one act of one patient, in the transaction of that act. Commands are decided one
 * after the other, each on what the ones before it made; then steps that would be with somebody who left pass on. Throws
 * DomainError with every refusal; nothing is written then.
 */
export function append(tx: Tx, recording: Recording, commands: readonly Command[]): readonly TubeEvent[] {
  const record = loadRecord(tx, recording.patientId);
  refuseClosedRecord(tx, record.patient);
  const { at, actId, patientId, staffId } = recording;
  const now = clinicNow(tx, at);
  const asked = must(decideEach(tx, record, { commands, now }));
  const passes = passFromClosed(tx, openSteps(fold(asked.events), record.books), now.today);
  const { own, events, added } = must(decideEach(tx, asked, { commands: passes, now }));
  const all = [...asked.added, ...added];
  const stored = { patientId, actId, recordedAt: at, recordedBy: staffId, zone: clinicOf(tx).zone };
  for (const event of all) appendEvent(tx, toStored(event, stored));
  const parted = partRecords(tx, record, { own, actId, at });
  writeProjection(tx, { ...record, events });
  for (const id of parted) append(tx, { ...recording, patientId: id }, []);
  return all;
}
