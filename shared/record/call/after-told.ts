import { printDay } from "#shared/day/print-day.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

const isBefore = (at: WhenAt, told: WhenAt): boolean => {
  if (at.when.latest === null || told.when.earliest === null) return false;
  if (at.when.latest !== told.when.earliest) return at.when.latest < told.when.earliest;
  return told.when.precision === "day" && at.time !== null && told.time !== null && at.time < told.time;
};

/** What is done about a red flag has its clock time, since hours are counted by it, and cannot lie before it was told. */
export function refusalsOfTime(field: string, at: WhenAt, told: WhenAt): readonly Refusal[] {
  if (at.time === null) return [{ code: "time-missing", field }];
  if (!isBefore(at, told) || told.when.earliest === null) return [];
  const day = `${printDay(told.when.earliest)}${told.time === null ? "" : `, ${told.time}`}`;
  return [{ code: "before-flag-told", field, args: { told: day } }];
}
