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

/** In a trial, or within the row's first hours after the start: nobody waits for another day. Null: neither. */
export function earlyOn({ tube, protocol }: TubeQuestion, on: Day): "a trial" | "the first hours" | null {
  if (tube.status !== "in") return null;
  if (tube.trial?.state === "running") return "a trial";
  const row = protocol.calls?.notReached ?? null;
  const { since } = tube.catheter;
  if (row === null || !tube.startedHere || since.precision !== "day") return null;
  const days = Math.ceil(row.twiceSameDayHours / HOURS_A_DAY);
  // Nobody knows the hour of the start: the last day that its hours may reach counts.
  return on <= addDays(since.earliest, days) ? "the first hours" : null;
}
