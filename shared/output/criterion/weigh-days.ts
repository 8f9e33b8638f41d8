import { endOfDay } from "#shared/day/instant.ts";
import { dayMoment, lastChangeNotBefore } from "#shared/output/criterion/changes.ts";
import type { CriterionReason, Weighed } from "#shared/output/criterion/criterion.ts";
import {
  type JudgedDay,
  type Judging,
  judgedDays,
  partsAfter,
} from "#shared/output/criterion/judged-days.ts";
import { HOUR_MS } from "#shared/output/rate.ts";

export type DaysRule = Judging & {
  /** So many days one after another. */
  readonly running: number;
  /** Hours that may have passed since the last complete day; null is "no row". */
  readonly noOlderHours: number | null;
};

const inSegment = ({ side }: JudgedDay): boolean => side !== "before or mixed";

/** Too few whole days have ended since the last change for any reading to make the number up. */
function tooFew(rule: DaysRule, days: readonly JudgedDay[]): CriterionReason[] {
  const { changes, zone, running } = rule;
  const before = days.slice(0, running).find((one) => !inSegment(one));
  if (before === undefined) return [];
  const change = lastChangeNotBefore(changes, dayMoment(before.day, zone), zone);
  return [
    {
      code: "too-few-days",
      since: change === undefined ? null : { what: change.kind, when: change.when },
      tube: change?.tube ?? null,
      count: days.filter((one) => one.complete && one.side === "since").length,
      needed: running,
    },
  ];
}

const notLow = (days: readonly JudgedDay[], underMl: number): CriterionReason[] =>
  days.flatMap(({ day, state, mlPer24h }) =>
    state === "not low" && mlPer24h !== null
      ? [{ code: "day-not-low", day, mlPer24h, underMl } as const]
      : [],
  );

function faultsOf(days: readonly JudgedDay[]): CriterionReason[] {
  return days.flatMap(({ day, side, state, faults }): CriterionReason[] => {
    if (side !== "since") return [{ code: "change-undated", day }];
    return state === "cannot tell" ? [{ code: "day-unknown", day, faults }] : [];
  });
}

/** How long ago the last complete day ended, held against the row. */
function ageFaults({ noOlderHours, zone, now }: DaysRule, last: JudgedDay): CriterionReason[] {
  if (noOlderHours === null) return [{ code: "no-row", of: "age of the last complete day" }];
  const tooOld = now - endOfDay(last.day, zone) > noOlderHours * HOUR_MS;
  return tooOld ? [{ code: "last-day-too-old", day: last.day, hours: noOlderHours }] : [];
}

/** A day that is not over may show already that it is no low one, or hold what nobody can add up. */
const laterFaults = (rule: DaysRule, last: JudgedDay): CriterionReason[] =>
  partsAfter(rule, last.day).flatMap(({ day, ml, faults }): CriterionReason[] => [
    ...(ml >= rule.underMl ? [{ code: "later-reading-over", day, ml, underMl: rule.underMl } as const] : []),
    ...(faults.length > 0 ? [{ code: "later-reading-unknown", day, faults } as const] : []),
  ]);

/**
 * So many complete days running, each under the limit, counted back from the last complete one since the last change.
 *
 * Against it, whatever is not known: too few days have ended since the change, or one of the last ended days was measured and is not
 * low. Both hold however the days without a figure would come out, because each of them lies in what would have to be low. A day that is not
 * low further back proves nothing while newer days are missing: those could be low.
 */
export function weighDays(rule: DaysRule): Weighed {
  const days = judgedDays(rule, rule.running);
  const ended = days.slice(0, rule.running);
  const against = [...tooFew(rule, days), ...notLow(ended.filter(inSegment), rule.underMl)];
  const lastAt = days.findIndex((one) => one.complete && inSegment(one));
  const last = days[lastAt];
  const window = last === undefined ? [] : days.slice(lastAt, lastAt + rule.running);
  const newer = days.slice(0, Math.max(lastAt, 0));
  const high = notLow(
    window.filter((one) => inSegment(one) && !ended.includes(one)),
    rule.underMl,
  );
  // Newer days without a figure are let pass by the row's hours, as long as the days before them would do.
  const unsettled = high.length > 0 || !window.every(inSegment);
  const unknown: CriterionReason[] =
    last === undefined
      ? [{ code: "no-complete-day" }, ...faultsOf(ended.filter(inSegment))]
      : [
          ...ageFaults(rule, last),
          ...faultsOf(unsettled ? newer : []),
          ...faultsOf(window.filter(inSegment)),
          ...high,
          ...laterFaults(rule, last),
        ];
  const shown = against.length > 0 || last === undefined ? ended : window;
  return {
    against,
    unknown,
    forIt: window.flatMap(({ day, state, mlPer24h }) =>
      state === "low" && mlPer24h !== null
        ? [{ code: "day-low", day, mlPer24h, underMl: rule.underMl } as const]
        : [],
    ),
    evidence: {
      days: shown.map(({ day, state, mlPer24h }) => ({ day, state, mlPer24h })),
      sessions: [],
      readings: shown.flatMap(({ readings }) => readings),
      events: [],
    },
  };
}
