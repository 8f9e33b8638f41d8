import * as z from "zod";
import { addDays, type Day, isDay } from "#shared/day/day.ts";

export const daySchema = z.custom<Day>((value) => typeof value === "string" && isDay(value), {
  message: "day-does-not-exist",
});

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

export const whenSchema = z.union([
  z
    .strictObject({
      precision: z.enum(["day", "month", "year", "span"]),
      earliest: daySchema,
      latest: daySchema,
    })
    .refine((when) => when.earliest <= when.latest, { message: "days-reversed" })
    .refine((when) => when.precision !== "day" || when.earliest === when.latest, {
      message: "day-not-exact",
    }),
  z.strictObject({ precision: z.literal("unknown"), earliest: z.null(), latest: z.null() }),
]);

export const onDay = (of: Day): When => ({ precision: "day", earliest: of, latest: of });
export const whenUnknown: When = { precision: "unknown", earliest: null, latest: null };

/** The part of a span that is not in the future: "in March", said on the 10th, ends on the 10th. Null when nothing is left. */
export function notAfter(when: When, today: Day): When | null {
  if (when.precision === "unknown" || when.latest <= today) return when;
  if (when.earliest > today) return null;
  return { ...when, latest: today };
}

export const shift = (of: Day | null, days: number): Day | null => (of === null ? null : addDays(of, days));
