import { addDays, type Day } from "#shared/day/day.ts";
import type { TubeQuestion } from "#shared/step/draft.ts";

const HOURS_A_DAY = 24;

/** The day of the next call of a trial that runs; null where none runs, or nobody knows when it began. */
export function trialTarget({ tube: { trial }, protocol }: TubeQuestion): Day | null {
  const row = protocol.calls?.trialOn ?? null;
  if (trial?.state !== "running" || row === null || trial.since.precision !== "day") return null;
  const days = row.days.toSorted((a, b) => a - b);
  return addDays(trial.since.earliest, days[trial.calls] ?? days.at(-1) ?? 0);
}

type Early = Pick<TubeQuestion, "tube" | "protocol">;

/**
 * The last day that the row's first hours after a start that was done here may reach: nobody knows the hour of the start. Null: no row, or
 * nobody knows the day.
 */
export function firstHoursUntil({ tube, protocol }: Early): Day | null {
  const row = protocol.calls?.notReached ?? null;
  const { since } = tube.catheter;
  if (tube.status !== "in" || row === null || !tube.startedHere || since.precision !== "day") return null;
  return addDays(since.earliest, Math.ceil(row.twiceSameDayHours / HOURS_A_DAY));
}

/** In a trial, or within the row's first hours after the start: nobody waits for another day. Null: neither. */
export function earlyOn(of: Early, on: Day): "a trial" | "the first hours" | null {
  if (of.tube.status !== "in") return null;
  if (of.tube.trial?.state === "running") return "a trial";
  const until = firstHoursUntil(of);
  return until !== null && on <= until ? "the first hours" : null;
}

/** The same of any of a patient's tubes: a trial before the first hours. */
export function earliestOn(tubes: readonly Early[], on: Day): ReturnType<typeof earlyOn> {
  const reasons = tubes.map((of) => earlyOn(of, on));
  return reasons.find((one) => one === "a trial") ?? reasons.find((one) => one !== null) ?? null;
}
