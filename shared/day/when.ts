import { addDays, type Day } from "#shared/day/day.ts";

/** How exactly a date is known. A span is a month, a year, or two days that somebody named. */
export const precisions = ["day", "month", "year", "span", "unknown"] as const;
export type Precision = (typeof precisions)[number];

/**
 * When something happened, as far as anyone knows: both ends are days of the clinic, null when unknown.
 * Where one date is needed, callers say which end: for dwell risk the earliest, for tract age the latest.
 */
export type When =
  | { readonly precision: "day" | "month" | "year" | "span"; readonly earliest: Day; readonly latest: Day }
  | { readonly precision: "unknown"; readonly earliest: null; readonly latest: null };

export const onDay = (of: Day): When => ({ precision: "day", earliest: of, latest: of });
export const whenUnknown: When = { precision: "unknown", earliest: null, latest: null };

/** The part of a span that is not in the future: "in March", said on the 10th, ends on the 10th. Null when nothing is left. */
export function notAfter(when: When, today: Day): When | null {
  if (when.precision === "unknown" || when.latest <= today) return when;
  if (when.earliest > today) return null;
  return { ...when, latest: today };
}

export const shift = (of: Day | null, days: number): Day | null => (of === null ? null : addDays(of, days));
