import type * as z from "zod";
import type { flushSchema, readingSchema } from "#shared/output/reading-schema.ts";

/** What can go into a tube beside its patency flush. None of it is flush, and none is subtracted. */
export const otherFluids = [
  "irrigation",
  "enema",
  "feed water",
  "contrast",
  "fibrinolytic",
  "sclerosant",
] as const;
export type OtherFluid = (typeof otherFluids)[number];

export const measuredBy = ["syringe", "bag scale", "estimate", "not recorded"] as const;
export type MeasuredBy = (typeof measuredBy)[number];

export const leaks = ["none", "damp", "soaking", "not recorded"] as const;
export type Leak = (typeof leaks)[number];

export type Flush = z.infer<typeof flushSchema>;
export type Reading = z.infer<typeof readingSchema>;
