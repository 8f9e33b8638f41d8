import * as z from "zod";
import type { Day } from "#shared/day/day.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { anchorRowSchema } from "#shared/protocol/anchor-rows.ts";
import { bleedingSchema } from "#shared/protocol/bleeding-rows.ts";
import { callRowsSchema } from "#shared/protocol/call-rows.ts";
import { balloonRowSchema, flushRowSchema, tipRowSchema } from "#shared/protocol/fluid-rows.ts";
import { intervalRowSchema, sourced } from "#shared/protocol/interval-row.ts";
import { outputRowsSchema } from "#shared/protocol/output-rows.ts";
import { passageRowsSchema } from "#shared/protocol/passage-rows.ts";
import { planningRowsSchema } from "#shared/protocol/planning-rows.ts";
import { redFlagRowSchema } from "#shared/protocol/red-flag-rows.ts";
import { tubeOutRowSchema } from "#shared/protocol/tube-out-rows.ts";
import { visitRowsSchema } from "#shared/protocol/visit-rows.ts";

/** The shape in which a version's rows are written today; older ones are lifted on read (lift-protocol.ts). */
export const PROTOCOL_SHAPE = 7;

/**
 * One version of the clinic's table. Versions are never edited: a clock keeps the number of the version that it started
 * under. While `approved` is null, EXAMPLE stands on every screen that shows a date from it. An empty list and null are "no row".
 */
export const protocolSchema = z.strictObject({
  shape: z.literal(PROTOCOL_SHAPE),
  version: z.int().min(1),
  approved: z.strictObject({ by: z.string(), on: daySchema }).nullable(),
  ages: z.literal("adults"),
  intervals: z.array(intervalRowSchema),
  /** Days after a placement, an exchange or a new puncture. */
  firstCall: z.strictObject({ from: z.int().min(0), to: z.int().min(0), ...sourced }),
  /** Days past the target after which the nurse takes it to a physician. */
  escalation: z.strictObject({ daysPastTarget: z.int().min(0), ...sourced }),
  passage: passageRowsSchema,
  output: z.strictObject({
    lowNetMl: z.number().min(0),
    lowDays: z.int().min(1),
    flushDoesNotComeBackMl: z.number().max(0),
    ...sourced,
  }),
  flush: z.array(flushRowSchema),
  balloon: balloonRowSchema.nullable(),
  tips: z.array(tipRowSchema),
  anchors: z.array(anchorRowSchema),
  outputRows: outputRowsSchema.nullable(),
  tubeOut: z.array(tubeOutRowSchema),
  redFlags: z.array(redFlagRowSchema),
  calls: callRowsSchema.nullable(),
  bleeding: bleedingSchema.nullable(),
  planning: planningRowsSchema.nullable(),
  visits: visitRowsSchema.nullable(),
});
export type Protocol = z.infer<typeof protocolSchema>;

export type Approval = { readonly by: string; readonly on: Day };
