import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { clockOf, type RaisedFlag, raisedIn } from "#server/calls/flag-context.ts";
import { now } from "#server/clock.ts";
import { protocolOf } from "#server/record/books.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { outWords } from "#server/visits/out-words.ts";
import { fold } from "#shared/tube/fold.ts";
import { standingEvents } from "#shared/tube/history.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

export function identityFor(db: Database, { patient }: Pick<PatientRecord, "patient">) {
  const { search: _search, contact: _contact, ...identity } = patient;
  return { ...identity, identifiers: identifiersOf(db, patient.id) };
}

/** Whom it was handed to, one after the other, and what ended it, as these entries stand. */
function courseOf({ events }: Pick<PatientRecord, "events">, flagId: string) {
  const entries = standingEvents(events).map(({ event }) => event);
  const handed = entries.flatMap(({ id, when, time, ...said }) =>
    said.kind === "red flag handed" && said.payload.flag === flagId
      ? [{ eventId: id, when, time, ...said.payload }]
      : [],
  );
  const done = entries.flatMap(({ id, when, time, ...said }) =>
    said.kind === "red flag done" && said.payload.flag === flagId
      ? [{ eventId: id, when, time, ...said.payload }]
      : [],
  );
  return { handed, done: done[0] ?? null };
}

/** What the newest table says now of the row that it was told by; null: it was told in own words. */
function rowNow(db: Database, { payload }: RaisedFlag["event"]) {
  const versions = newestVersions(db);
  if (payload.row === null || versions === null) return null;
  const protocol = protocolOf(db, versions.protocol);
  const row = protocol.redFlags.find(({ id }) => id === payload.row) ?? null;
  return { id: payload.row, version: versions.protocol, approved: protocol.approved, row };
}

const isOut = ({ status, dislodged }: TubeState): boolean =>
  status === "out, undecided" || (status === "in" && dislodged !== null);

/** The tube that it is of; of the patient, every tube that is out. */
const tubesOf = ({ payload }: RaisedFlag["event"], { tubes }: Pick<PatientTubes, "tubes">) =>
  tubes.filter((tube) => (payload.of === null ? isOut(tube) : tube.id === payload.of.tube));

/**
 * Everything that a red flag's page shows, also once it is closed: what was told, by which row, who has it, what was done; of each tube that
 * is out since when, and how old its tract is. Throws `entry-unknown`.
 */
export function viewFlag(db: Database, asked: { readonly patientId: string; readonly flagId: string }) {
  const record = loadRecord(db, asked.patientId);
  const { event, when } = raisedIn(record, asked.flagId);
  const state = fold(record.events);
  const at = now(db);
  const { name, phone } = clinicOf(db);
  return {
    ...clockOf(db, at),
    patient: identityFor(db, record),
    flag: { id: event.id, when, time: event.time, ...event.payload },
    row: rowNow(db, event),
    ...courseOf(record, event.id),
    tubes: tubesOf(event, state).map((tube) => ({
      id: tube.id,
      name: tubeName(tube),
      out: isOut(tube) ? outWords(db, tube, at) : null,
    })),
    conditions: state.conditions,
    clinic: { name, phone },
    lastSeen: state.lastSeq,
  };
}

export type FlagView = ReturnType<typeof viewFlag>;
