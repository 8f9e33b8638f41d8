import {
  type CallNow,
  type CallRow,
  callOrder,
  callRows,
  comingOrder,
  countCalls,
  type RingingStep,
  runningTrials,
  stepsRungAbout,
  zonesOnList,
} from "#db/queries/call-lines.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { heldAfter } from "#server/calls/hold-patient.ts";
import { machineNow, now } from "#server/clock.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { ringingKinds } from "#shared/call/call-line.ts";
import { minuteOf, partNow } from "#shared/call/part-now.ts";
import { clocksOf, thereAt } from "#shared/call/reach.ts";
import { addDays, type Day, day } from "#shared/day/day.ts";
import { clockText, dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { shutOn } from "#shared/words/against.ts";

/** Patients of one page. */
export const CALL_PAGE = 40;
/** Days ahead that are counted. */
const COMING_DAYS = 7;
/** Before every day on which somebody is rung. */
export const EVER = day("1900-01-01");

/** When the list is looked at, by the clinic's clock and those of patients who live elsewhere, each with the part of the day by the clinic's rows. */
export function callNow(db: Database): CallNow {
  const { zone: own } = clinicOf(db);
  const at = now(db);
  const hours = viewProtocol(db).protocol.calls?.hours ?? [];
  const clocks = [null, ...zonesOnList(db)].map((zone) => {
    const time = clockText(at, zone ?? own);
    return { zone, minute: minuteOf(time), part: partNow(time, hours) };
  });
  return { today: dayAt(at, own), time: clockText(at, own), clocks };
}

type ShownBeside = { readonly steps: readonly RingingStep[]; readonly at: Instant; readonly own: Zone };

const shown = (
  { contact, familyName, givenName, number, birthOn, patientId, livesIn, ...row }: CallRow,
  { steps, at, own }: ShownBeside,
) => ({
  ...row,
  there: thereAt(at, clocksOf(own, { livesIn })),
  patient: { id: patientId, familyName, givenName, number, birthOn },
  contact: contact as Contact,
  steps: steps.filter((step) => step.patientId === patientId),
});

export type CallListLine = ReturnType<typeof shown>;

/** Lines of these patients, in the order of the ids: what comes up by a day, and why. */
export function callLines(db: Database, ids: readonly string[], by: Day): readonly CallListLine[] {
  const steps = stepsRungAbout(db, { ids, kinds: ringingKinds });
  const beside = { steps, at: now(db), own: clinicOf(db).zone };
  return callRows(db, { ids, after: heldAfter(machineNow()) }).map((row) => {
    const { steps: all, ...line } = shown(row, beside);
    const due = all.filter(({ dueOn }) => dueOn <= by);
    return { ...line, steps: due.length === 0 ? all : due };
  });
}

export type AskingCalls = {
  readonly which: "due" | "coming";
  /** Counted from 1. */
  readonly page: number;
};

/**
 * Whom somebody rings today, in the order in which they are rung, or who comes up in the next days. On a day on which the clinic is closed, who
 * covers the trials.
 */
export function callList(db: Database, { which, page }: AskingCalls) {
  const at = callNow(db);
  const { today } = at;
  const to = addDays(today, COMING_DAYS);
  const rows = { limit: CALL_PAGE, skip: (page - 1) * CALL_PAGE };
  const ids =
    which === "due" ? callOrder(db, { ...at, ...rows }) : comingOrder(db, { after: today, to, ...rows });
  const counts = {
    due: countCalls(db, { after: EVER, to: today }),
    coming: countCalls(db, { after: today, to }),
  };
  const shut = shutOn(today, viewProtocol(db).calendar);
  return {
    ...at,
    lines: callLines(db, ids, which === "due" ? today : to),
    counts,
    total: counts[which],
    before: rows.skip,
    days: COMING_DAYS,
    closed: shut === null ? null : { because: shut, trials: runningTrials(db) },
  };
}
