import { type OpenPatient, openPatients, versionsInUse } from "#db/queries/open-patients.ts";
import type { Database } from "#db/sqlite.ts";
import { booksOf, calendarOf, protocolOf } from "#server/record/books.ts";
import { fromShort } from "#server/record/in-short.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { reachedAnyTime, reachOf } from "#shared/call/reach.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { type Differs, differsFor, outputDiffers } from "#shared/protocol/differs.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { type MovedStep, movedSteps } from "#shared/step/repinned.ts";
import type { Pins } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** The tables that everything would go by: what stands, or what somebody is about to sign. */
export type Tables = { readonly protocol: Protocol; readonly calendar: ClinicCalendar };

/** What would move of one patient, and the versions that the tubes go by. */
export type MovedOfPatient = {
  readonly patientId: string;
  readonly tubes: readonly Pick<TubeState, "id" | "pins">[];
  readonly steps: readonly MovedStep[];
};

/** Whose dates can move: a closed list of kinds where nothing but intervals differs from every version in use. */
function concerned(db: Database, { protocol, calendar }: Tables, inUse: readonly Pins[]): Differs {
  const kinds = new Set<TubeKind>();
  for (const pins of inUse) {
    if (pins.calendar !== calendar.version) return "all";
    if (pins.protocol === protocol.version) continue;
    const differs = differsFor(protocolOf(db, pins.protocol), protocol);
    if (differs === "all") return "all";
    for (const kind of differs) kinds.add(kind);
  }
  return [...kinds];
}

/** Beside the newest versions, which stand in the books, those that nobody has signed yet. */
function booksWith(db: Database, { protocol, calendar }: Tables): Books {
  const books = booksOf(db, null);
  return {
    ...books,
    protocol: (version) => (version === protocol.version ? protocol : protocolOf(db, version)),
    calendar: (version) => (version === calendar.version ? calendar : calendarOf(db, version)),
  };
}

type Known = ReturnType<typeof fromShort>;

/** A patient as stored by the last write. Older releases stored none, and none holds the whole stories that alarms are read from: then the events are folded. */
function knownOf(db: Database, { patientId, state }: OpenPatient, whole: boolean): Known {
  if (state !== null && !whole) return fromShort(state);
  const { patient, events } = loadRecord(db, patientId);
  const { livesIn } = reachOf(patient.contact as Contact);
  return { bornOn: patient.birthOn, livesIn, state: fold(events) };
}

/** A review that rested on readings stands by what became of them since: their logs are read whatever the rows say. */
const restsOnReadings = ({ tubes }: PatientTubes): boolean =>
  tubes.some(({ lastReview, status }) => status !== "ended" && (lastReview?.evidence ?? null) !== null);

/**
 * What would move of everybody if all records went by these tables, patient by patient: nothing can be written before the last. Logs are
 * read only where the rows of output differ, and where a review rested on them: by the same rows they ask for the same. Patients of whom
 * nothing moves are left out.
 */
export function* movedEverywhere(db: Database, tables: Tables): Generator<MovedOfPatient> {
  const inUse = versionsInUse(db);
  const who = concerned(db, tables, inUse);
  if (who !== "all" && who.length === 0) return;
  const pins = { protocol: tables.protocol.version, calendar: tables.calendar.version };
  const books = booksWith(db, tables);
  const sameAlarms = sameOutputRows(db, tables, inUse);
  for (const patient of openPatients(db, who === "all" ? null : who)) {
    const stored = knownOf(db, patient, !sameAlarms);
    const logged = !sameAlarms || restsOnReadings(stored.state);
    const { state, bornOn, livesIn } = logged && sameAlarms ? knownOf(db, patient, true) : stored;
    const readings = logged ? books.readings : () => [];
    const reach = { ...reachedAnyTime, livesIn };
    const steps = movedSteps(state, { ...books, readings, bornOn, reach }, pins);
    if (steps.length === 0) continue;
    const tubes = state.tubes.map(({ id, pins: own }) => ({ id, pins: own }));
    yield { patientId: patient.patientId, tubes, steps };
  }
}

const sameOutputRows = (db: Database, { protocol }: Tables, inUse: readonly Pins[]): boolean =>
  inUse.every(
    (pins) => pins.protocol === protocol.version || !outputDiffers(protocolOf(db, pins.protocol), protocol),
  );
