import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import type { PatientRecord } from "#server/record/load-record.ts";
import { clocksOf } from "#shared/call/reach.ts";
import { dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { CallRows } from "#shared/protocol/call-rows.ts";
import type { CallingContext } from "#shared/record/call/calling-context.ts";
import { questionsInCall } from "#shared/record/call/questions-in-call.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { known } from "#shared/tube/certainty.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { drainedWords } from "#shared/words/drained.ts";

const MS_A_DAY = 86_400_000;

const spanOf = (hours: CallRows["hours"]): CallingContext["hours"] =>
  hours.length === 0
    ? null
    : { from: Math.min(...hours.map(({ from }) => from)), to: Math.max(...hours.map(({ to }) => to)) };

/** The last volume of a tube that is no older than a day and not nothing, in words; null where there is none. */
function drainedLately(readings: readonly Reading[], at: Instant, zone: Zone): string | null {
  const last = readings.filter(({ to }) => to > at - MS_A_DAY).toSorted((a, b) => b.to - a.to)[0];
  const volume = last?.gross == null ? undefined : known(last.gross);
  return last === undefined || volume === undefined || volume === 0 ? null : drainedWords(volume, last, zone);
}

/** What is needed of a record to call about it. */
export type Calling = { readonly record: PatientRecord; readonly state: PatientTubes; readonly at: Instant };

/**
 * What a call is typed beside: the clinic's questions as they are today, for the tubes that are in, each with what its answer opens. Dates are
 * pinned to the version that they were made by; what is asked and where it leads is always the newest.
 */
export function callContext(db: Database, { record, state, at }: Calling): CallingContext {
  const { zone } = clinicOf(db);
  const { protocol } = viewProtocol(db);
  const questions = questionsInCall({
    protocol,
    patient: state,
    drained: (tubeId) => drainedLately(record.books.readings(tubeId), at, zone),
  });
  const { language, needsInterpreter, contact } = record.patient;
  const inpatient = state.whereabouts?.place === "inpatient";
  return {
    today: dayAt(at, zone),
    now: at,
    zone,
    questions,
    to: inpatient ? "the ward" : "the patient",
    number: inpatient ? null : ((contact as Contact).telephones[0]?.number ?? null),
    interpreter: needsInterpreter === false || language === "" ? null : language,
    clocks: clocksOf(zone, record.books.reach),
    hours: spanOf(protocol.calls?.hours ?? []),
  };
}
