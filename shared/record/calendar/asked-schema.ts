import * as z from "zod";
import { daySchema } from "#shared/day/when-schema.ts";
import { actIdSchema, submitSchema } from "#shared/record/act.ts";
import { REASON_LIMIT } from "#shared/record/calendar/closing-form.ts";

const { texts } = submitSchema.shape;
const version = z.int().min(1);

/** More than any country has in a year. */
const MOST_HOLIDAYS = 100;

export const calendarAskedSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("close"), texts, moves: daySchema.optional() }),
  z.strictObject({ kind: z.literal("open half a day"), texts, moves: daySchema.optional() }),
  z.strictObject({ kind: z.literal("open weekdays"), texts }),
  z.strictObject({ kind: z.literal("take a closure away"), from: daySchema }),
  z.strictObject({ kind: z.literal("take a half day away"), on: daySchema }),
  z.strictObject({
    kind: z.literal("holidays"),
    days: z
      .array(z.strictObject({ on: daySchema, name: z.string().trim().min(1).max(REASON_LIMIT) }))
      .min(1)
      .max(MOST_HOLIDAYS)
      .readonly(),
  }),
]);

/** `seen`: the version of the calendar that the page showed. */
export const changingCalendarSchema = z.strictObject({
  actId: actIdSchema,
  seen: version,
  asked: calendarAskedSchema,
});
/** `version`: what stood before, and is to stand again. */
export const restoringCalendarSchema = z.strictObject({ actId: actIdSchema, seen: version, version });
export const previewingCalendarSchema = z.strictObject({
  seen: version,
  asked: calendarAskedSchema,
  page: z.int().min(1).max(10_000),
});
export const askingHolidaysSchema = z.strictObject({
  country: z.string().max(8),
  region: z.string().max(24),
  year: z.int().min(1970).max(2199),
});

export type ChangingCalendar = z.infer<typeof changingCalendarSchema>;
export type RestoringCalendar = z.infer<typeof restoringCalendarSchema>;
export type PreviewingCalendar = z.infer<typeof previewingCalendarSchema>;
export type AskingHolidays = z.infer<typeof askingHolidaysSchema>;
