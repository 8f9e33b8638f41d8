import { clinicOf } from "#db/queries/clinic.ts";
import { appendEvent } from "#db/queries/events.ts";
import { replaceProjection } from "#db/queries/projections.ts";
import type { Tx } from "#db/transaction.ts";
import { repropose } from "#server/dates/repropose.ts";
import { criterionFacts } from "#server/output/criterion-facts.ts";
import { clinicNow, type Decided, decideEach } from "#server/record/decide-each.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { partRecords } from "#server/record/part-records.ts";
import { passFromClosed } from "#server/record/pass-from-closed.ts";
import { type Computed, projectionFrom } from "#server/record/project.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { toStored } from "#server/record/stored-event.ts";
import { refuseTakenSlots } from "#server/visits/refuse-taken-slots.ts";
import { callLineOf } from "#shared/call/call-line.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { byVolume } from "#shared/output/criterion/by-volume.ts";
import type { Reading } from "#shared/output/reading.ts";
import { outputAsks } from "#shared/review/output-asks.ts";
import { type Books, openSteps } from "#shared/step/open-steps.ts";
import type { Command } from "#shared/tube/decide.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";

/** In which act, by whom and at which instant something is recorded. */
export type Recording = {
  readonly patientId: string;
  readonly actId: string;
  readonly staffId: string;
  readonly at: Instant;
  /** The record as it stands before this act, where the act has read it already. */
  readonly loaded?: PatientRecord;
  /** The readings of a tube that stand with this act, where its log is read already. */
  readonly standing?: { readonly tubeId: string; readonly readings: readonly Reading[] };
};

/** Steps and criterion ask for the same readings: each log is read once. */
function readOnce(books: Books): Books {
  const logs = new Map<string, readonly Reading[]>();
  const readings = (tubeId: string): readonly Reading[] => {
    const log = logs.get(tubeId) ?? books.readings(tubeId);
    logs.set(tubeId, log);
    return log;
  };
  return { ...books, readings };
}

function compute({ events, books }: Pick<PatientRecord, "events" | "books">): Computed {
  const state = fold(events);
  const read = readOnce(books);
  const byOutput = state.tubes.filter(({ role }) => byVolume.includes(role));
  const asks = new Map(byOutput.map((tube) => [tube.id, outputAsks(criterionFacts(tube, state, read))]));
  const steps = openSteps(state, read);
  const { bornOn, reach } = books;
  return { state, steps, asks, bornOn, livesIn: reach.livesIn, call: callLineOf(state, steps, read) };
}

type Counted = Pick<PatientRecord, "patient" | "events" | "books">;

function write(tx: Tx, { patient, books }: Counted, computed: Computed): void {
  replaceProjection(tx, patient.id, projectionFrom(patient.id, computed));
  repropose(tx, { patientId: patient.id, state: computed.state, books });
}

/** Computes a patient's tubes and open steps from events and readings, and writes them in place of what stood. */
export const writeProjection = (tx: Tx, record: Counted): void => write(tx, record, compute(record));

/** A log that the act has read is not read again. */
const withStanding = (books: Books, standing: Recording["standing"]): Books => ({
  ...books,
  readings: (tubeId) => (tubeId === standing?.tubeId ? standing.readings : books.readings(tubeId)),
});

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
  const loaded = recording.loaded ?? loadRecord(tx, recording.patientId);
  refuseClosedRecord(tx, loaded.patient);
  const record = { ...loaded, books: withStanding(loaded.books, recording.standing) };
  const { at, actId, patientId, staffId } = recording;
  const now = clinicNow(tx, at);
  const asked = must(decideEach(tx, record, { commands, now }));
  const computed = compute({ ...record, events: asked.events });
  const passes = passFromClosed(tx, computed.steps, now.today);
  const { own, events, added } = must(decideEach(tx, asked, { commands: passes, now }));
  const all = [...asked.added, ...added];
  const stored = { patientId, actId, recordedAt: at, recordedBy: staffId, zone: clinicOf(tx).zone };
  for (const event of all) appendEvent(tx, toStored(event, stored));
  refuseTakenSlots(tx, at, { patientId, visits: computed.state.visits, today: now.today });
  const parted = partRecords(tx, record, { own, actId, at });
  write(tx, record, added.length === 0 ? computed : compute({ ...record, events }));
  for (const id of parted) append(tx, { patientId: id, actId, staffId, at }, []);
  return all;
}
