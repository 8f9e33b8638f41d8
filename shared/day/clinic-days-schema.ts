import * as z from "zod";
import { dayHalves } from "#shared/day/clinic-days.ts";
import { daySchema } from "#shared/day/when-schema.ts";

const weekdaySchema = z.literal([1, 2, 3, 4, 5, 6, 7]);

export const closureSchema = z
  .strictObject({ from: daySchema, to: daySchema, reason: z.string().trim().min(1, "text-missing").max(200) })
  .refine((closure) => closure.from <= closure.to, { message: "closure-ends-before-start", path: ["to"] });

export const halfDaySchema = z.strictObject({
  on: daySchema,
  open: z.enum(dayHalves),
  reason: z.string().trim().min(1, "text-missing").max(200),
});

export const clinicCalendarSchema = z.strictObject({
  version: z.int().min(1),
  openWeekdays: z
    .array(weekdaySchema)
    .refine((days) => new Set(days).size === days.length, "choice-repeated"),
  closures: z.array(closureSchema),
  halfDays: z.array(halfDaySchema).optional(),
});
