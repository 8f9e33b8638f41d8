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

/** Of a chest tube: air that bubbles through the seal, and water that moves with breathing. */
export const airLeaks = ["none", "present", "not recorded"] as const;
export type AirLeak = (typeof airLeaks)[number];

export const swings = ["seen", "not seen", "not recorded"] as const;
export type Swing = (typeof swings)[number];

/** What may be felt while a tube is drained by session. */
export const sessionSymptoms = ["cough", "pain", "breathlessness"] as const;
export type SessionSymptom = (typeof sessionSymptoms)[number];

export type Flush = z.infer<typeof flushSchema>;
export type Reading = z.infer<typeof readingSchema>;

/** Whether somebody only guessed what its figure is made of. */
export const isEstimated = ({ gross, measuredBy, flushGiven, flushWithdrawn }: Reading): boolean =>
  gross.certainty === "estimated" ||
  measuredBy === "estimate" ||
  [flushGiven, flushWithdrawn].some((flush) => typeof flush === "object" && flush.estimated);

/** What somebody said was felt; nothing where nobody said. */
export const feltIn = ({ symptoms }: Reading): readonly SessionSymptom[] =>
  symptoms === "not recorded" ? [] : symptoms;
