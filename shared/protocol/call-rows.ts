import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";

const days = z.int().min(0).max(365);

/** When somebody is called, beside the first call. A list left empty and null are "no row". */
export const callRowsSchema = z.strictObject({
  /** Collection drains, until removal: either of these. */
  collectionEvery: z.strictObject({ days: z.array(days), ...sourced }).nullable(),
  /** Days of a capped or clamped trial, counted in hours and not in working days. */
  trialOn: z.strictObject({ days: z.array(days).min(1), closed: words, ...sourced }).nullable(),
  beforeExchange: z.strictObject({ days, workingDays: days, ...sourced }).nullable(),
  afterRemoval: z.strictObject({ from: days, to: days, ...sourced }).nullable(),
  notReached: z
    .strictObject({
      attempts: z.int().min(1),
      withinWorkingDays: days,
      /** Of trials, and this soon after placement: twice the same day. */
      twiceSameDayHours: z.int().min(1),
      lastly: z.array(words).min(1),
      ...sourced,
    })
    .nullable(),
  /** Of an inpatient: asked again, and the ward is rung about the tube. */
  whereaboutsEvery: z.strictObject({ days: z.int().min(1), ward: words, ...sourced }).nullable(),
});
export type CallRows = z.infer<typeof callRowsSchema>;
