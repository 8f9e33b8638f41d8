import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import { dayAt, type Instant, type Zone } from "#shared/day/instant.ts";
import {
  type Change,
  lastChange,
  lastChangeNotBefore,
  type Side,
  sideOfAll,
} from "#shared/output/criterion/changes.ts";
import type { CriterionReason, SessionFault, Weighed } from "#shared/output/criterion/criterion.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { netVolume } from "#shared/output/net-volume.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import { known } from "#shared/tube/certainty.ts";

export type SessionsRule = {
  readonly readings: readonly Reading[];
  readonly flushOrdered: boolean;
  readonly changes: readonly Change[];
  readonly underMl: number;
  readonly running: number;
  readonly noOlderHours: number | null;
  readonly clinical: ClinicalState;
  readonly zone: Zone;
  readonly now: Instant;
};

type Session = {
  readonly id: string;
  readonly at: Instant;
  readonly side: Side;
  readonly ml: number | null;
  readonly state: "low" | "not low" | "cannot tell";
  readonly faults: readonly SessionFault[];
  readonly symptoms: Reading["symptoms"];
};

function judged(reading: Reading, { flushOrdered, changes, underMl, zone }: SessionsRule): Session {
  const net = netVolume(reading, flushOrdered);
  const ml = net.kind === "known" ? toMl(net.ul) : null;
  const faults: SessionFault[] = net.kind === "cannot tell" ? [...net.because] : [];
  if (reading.gross.certainty === "estimated" || reading.measuredBy === "estimate") faults.push("estimated");
  if (reading.leak === "damp" || reading.leak === "soaking") faults.push("leak-round-tube");
  if (reading.symptoms === "not recorded") faults.push("symptoms-not-recorded");
  const state = ml !== null && ml >= underMl ? "not low" : faults.length > 0 ? "cannot tell" : "low";
  const moment = { day: dayAt(reading.to, zone), from: reading.to };
  const { id, to: at, symptoms } = reading;
  return { id, at, side: sideOfAll(changes, moment, zone), ml, state, faults, symptoms };
}

/** Sessions that are over, the newest first; what was drawn off at a procedure is none. */
const sessionsOf = (rule: SessionsRule): readonly Session[] =>
  rule.readings
    .filter(({ to, procedureAspirate }) => to <= rule.now && !procedureAspirate)
    .toSorted((a, b) => b.to - a.to || (a.id < b.id ? -1 : 1))
    .map((reading) => judged(reading, rule));

/** Too few since the last change, or since the tube was opened here. */
function tooFew({ changes, running, zone }: SessionsRule, sessions: readonly Session[]): CriterionReason[] {
  if (sessions.filter(({ side }) => side !== "before or mixed").length >= running) return [];
  const before = sessions.find(({ side }) => side === "before or mixed");
  const change =
    before === undefined
      ? lastChange(changes, zone)
      : lastChangeNotBefore(changes, { day: dayAt(before.at, zone), from: before.at }, zone);
  return [
    {
      code: "too-few-sessions",
      since: change === undefined ? null : { what: change.kind, when: change.when },
      tube: null,
      count: sessions.filter(({ side }) => side === "since").length,
      needed: running,
    },
  ];
}

function against(window: readonly Session[], { underMl }: SessionsRule): CriterionReason[] {
  return window.flatMap(({ at, ml, state, symptoms }): CriterionReason[] => [
    ...(state === "not low" && ml !== null ? [{ code: "session-not-low", at, ml, underMl } as const] : []),
    ...(typeof symptoms !== "string" && symptoms.length > 0
      ? [{ code: "session-symptoms", at, symptoms } as const]
      : []),
  ]);
}

function ageFaults({ noOlderHours, now }: SessionsRule, newest: Session): CriterionReason[] {
  if (noOlderHours === null) return [{ code: "no-row", of: "age of the last complete day" }];
  if (now - newest.at <= noOlderHours * HOUR_MS) return [];
  return [{ code: "last-session-too-old", at: newest.at, hours: noOlderHours }];
}

/** A cough or breathlessness that was noted since the last session, or may have been. */
function sinceNoted({ clinical, zone }: SessionsRule, newest: Session): CriterionReason[] {
  const found = clinical.coughOrBreathlessness;
  if (found === undefined || known(found.fact) !== true) return [];
  const { when, time } = found;
  const at = time === null ? null : instantOf(found, zone);
  const before = at === null ? when.latest !== null && when.latest < dayAt(newest.at, zone) : at < newest.at;
  return before ? [] : [{ code: "cough-or-breathlessness", when }];
}

/**
 * So many sessions running, each under the limit and without symptoms. A session is a reading; one that was missed left none, and what was
 * not measured is no low one. Too long a silence says nothing of the sessions since, so it stands before all that speaks against.
 */
export function weighSessions(rule: SessionsRule): Partial<Weighed> {
  const sessions = sessionsOf(rule);
  const newest = sessions[0];
  if (newest === undefined) return { unknown: [{ code: "no-session" }] };
  const old = ageFaults(rule, newest);
  const window = sessions.filter(({ side }) => side !== "before or mixed").slice(0, rule.running);
  const proven = [...tooFew(rule, sessions), ...against(window, rule), ...sinceNoted(rule, newest)];
  const unknown = window.flatMap(({ at, side, state, faults }): CriterionReason[] => {
    if (side === "maybe") return [{ code: "change-undated", day: dayAt(at, rule.zone) }];
    return state === "cannot tell" ? [{ code: "session-unknown", at, faults }] : [];
  });
  return {
    against: old.length > 0 ? [] : proven,
    unknown: [...old, ...(old.length > 0 ? proven : []), ...unknown],
    forIt: window.flatMap(({ at, ml, state }) =>
      state === "low" && ml !== null ? [{ code: "session-low", at, ml, underMl: rule.underMl } as const] : [],
    ),
    evidence: {
      days: [],
      sessions: window.map(({ at, state, ml }) => ({ at, state, ml })),
      readings: window.map(({ id }) => id),
      events: [],
    },
  };
}
