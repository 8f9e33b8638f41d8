import { addDays, type Day, daysBetween } from "#shared/day/day.ts";
import type { CountableDays } from "#shared/output/trend/countable-days.ts";
import { HORIZON_DAYS, SILENT_DAYS, WIDEST_SPAN_DAYS } from "#shared/output/trend/limits.ts";
import type { TheilSen } from "#shared/output/trend/theil-sen.ts";

/** The clinic's row: under it a net day is low. */
export type LowRow = { readonly lowNetMl: number };

export const noSpanReasons = [
  "no-row",
  "too-few-days",
  "days-too-old",
  "already-under",
  "rising",
  "interval-holds-zero",
  "too-wide",
  "too-far",
] as const;
export type NoSpanReason = (typeof noSpanReasons)[number];

/** A span of days, never one: `from` by the steepest slope of the interval, `to` by the flattest. */
export type IfUnchanged =
  | { readonly kind: "span"; readonly from: Day; readonly to: Day; readonly lowNetMl: number }
  | { readonly kind: "none"; readonly because: NoSpanReason };

const none = (because: NoSpanReason): IfUnchanged => ({ kind: "none", because });

/** Sums of decimals come out a hair over or under a whole day; a hair is no day. */
const withoutHair = (days: number): number => Math.round(days * 1e6) / 1e6;

/**
 * Within which days the median line would go under the row, if nothing changed: a falling line through the anchor, once with each end
 * of the slope's interval. At the row is not under it. Days before `until` are past, and the span has at least two days. It tells
 * nothing where the slope may be none, where the line is under the row already, and where the span is wide, far, or of days gone
 * silent (limits.ts).
 */
export function ifUnchanged(days: CountableDays, line: TheilSen, row: LowRow | null): IfUnchanged {
  if (row === null) return none("no-row");
  const first = days.used[0];
  const last = days.used.at(-1);
  if (line.kind === "none" || line.interval.kind === "none" || first === undefined || last === undefined)
    return none("too-few-days");
  const { slope, anchor, interval } = line;
  const today = daysBetween(first.day, days.until ?? last.day);
  if (today - last.index > SILENT_DAYS) return none("days-too-old");
  if (withoutHair(anchor.y + slope * (last.index - anchor.x)) < row.lowNetMl) return none("already-under");
  if (interval.low > 0) return none("rising");
  if (interval.high >= 0) return none("interval-holds-zero");

  const firstUnder = (by: number): number =>
    Math.floor(withoutHair(anchor.x + (row.lowNetMl - anchor.y) / by)) + 1;
  const latest = firstUnder(interval.high);
  if (latest < today) return none("days-too-old");
  const from = Math.max(firstUnder(interval.low), last.index + 1, today);
  const to = Math.max(latest, from + 1);
  if (to - from > WIDEST_SPAN_DAYS) return none("too-wide");
  if (to - last.index > HORIZON_DAYS) return none("too-far");
  return {
    kind: "span",
    from: addDays(first.day, from),
    to: addDays(first.day, to),
    lowNetMl: row.lowNetMl,
  };
}
