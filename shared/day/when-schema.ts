import * as z from "zod";
import { type Day, isDay } from "#shared/day/day.ts";

export const daySchema = z.custom<Day>((value) => typeof value === "string" && isDay(value), {
  message: "day-does-not-exist",
});

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
