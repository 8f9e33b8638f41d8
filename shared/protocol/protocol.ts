import * as z from "zod";
import type { Day } from "#shared/day/day.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { factors } from "#shared/tube/vocabulary.ts";

const days = z.int().min(0).max(3650).nullable();

export const intervalRowSchema = z.strictObject({
  kind: z.enum(tubeKinds),
  id: z.string().min(1).max(80),
  factor: z.enum(factors).nullable(),
  asks: z.enum(["exchange", "review", "operator's date"]),
  earliest: days,
  target: days,
  latest: days,
  hardLatest: days,
  immatureUnder: days,
  notRemovedBefore: days,
  source: z.string().max(200),
});
export type ProtocolRow = z.infer<typeof intervalRowSchema>;

const sourced = { source: z.string().max(200) };

/**
 * One version of the clinic's table. Versions are never edited: a clock keeps the number of the version that it started
 * under. While `approved` is null, EXAMPLE stands on every screen that shows a date from it.
 */
export const protocolSchema = z.strictObject({
  version: z.int().min(1),
  approved: z.strictObject({ by: z.string(), on: daySchema }).nullable(),
  ages: z.literal("adults"),
  intervals: z.array(intervalRowSchema),
  /** Days after a placement, an exchange or a new puncture. */
  firstCall: z.strictObject({ from: z.int(), to: z.int(), ...sourced }),
  /** Days past the target after which the nurse takes it to a physician. */
  escalation: z.strictObject({ daysPastTarget: z.int(), ...sourced }),
  /** What a wire needs beyond its own size in a measured bore, and the tolerance of a bore given without one. */
  passage: z.strictObject({ clearance: lengthSchema, boreTolerance: lengthSchema, ...sourced }),
  output: z.strictObject({
    lowNetMl: z.number(),
    lowDays: z.int(),
    flushDoesNotComeBackMl: z.number(),
    ...sourced,
  }),
});
export type Protocol = z.infer<typeof protocolSchema>;

export type Approval = { readonly by: string; readonly on: Day };
