import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";

export const bleedingClasses = ["low", "high"] as const;

/** A class of bleeding risk as a guideline has it. Shown for discussion: no hold is computed from it. */
export const bleedingRowSchema = z.strictObject({
  class: z.enum(bleedingClasses),
  acts: z.array(z.strictObject({ act: words, ...sourced })).min(1),
  /** INR at most, from the stricter to the laxer of the guideline's figures. */
  inrAtMost: z.strictObject({ from: z.number().min(0), to: z.number().min(0) }),
  /** x 10^9/L. */
  plateletsAtLeast: z.number().min(0),
  labs: words.nullable(),
  ...sourced,
});
export type BleedingRow = z.infer<typeof bleedingRowSchema>;

export const bleedingSchema = z.strictObject({
  rows: z.array(bleedingRowSchema),
  liver: words.nullable(),
  /** Where access may be lost: both classes are shown, with this question. */
  accessAtRisk: words.nullable(),
  ...sourced,
});
