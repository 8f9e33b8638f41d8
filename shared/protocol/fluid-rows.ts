import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";

/** What is usually ordered to flush. An order is never subtracted; what was given is. */
export const flushRowSchema = z.strictObject({ kind: z.enum(tubeKinds), order: words, ...sourced });

/** Water in a balloon: the first check in a window of days from the start of the catheter's clock, then every so many. */
export const balloonRowSchema = z.strictObject({
  first: z.strictObject({ from: z.int().min(0), to: z.int().min(0) }),
  every: z.int().min(1),
  /** A loss above this against the last fill is a question. */
  lossOverMl: z.number().min(0),
  /** So many such losses in a row are an alarm. */
  alarmAfter: z.int().min(1),
  /** What the balloon is filled with. */
  fill: words,
  ...sourced,
});
export type BalloonRow = z.infer<typeof balloonRowSchema>;

/** Days until the tip is confirmed, and until it is again; null is "no row". */
export const tipRowSchema = z.strictObject({
  kind: z.enum(tubeKinds),
  within: z.int().min(0),
  again: z.int().min(1).nullable(),
  ...sourced,
});
export type TipRow = z.infer<typeof tipRowSchema>;
