import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";

/** What an exchange is planned with. */
export const planningRowsSchema = z.strictObject({
  /** Minutes of room that a change takes; a kind without one is "no row". */
  room: z.array(
    z.strictObject({ kinds: z.array(z.enum(tubeKinds)).min(1), minutes: z.int().min(1), ...sourced }),
  ),
  /** Upsizing: the usual step, and the step over which a note is asked. In French. */
  upsize: z.strictObject({ usualStepF: z.number(), noteOverF: z.number(), ...sourced }).nullable(),
  /**
   * A wire is at least tube length inside (full less external) + beyond the tip + the longer tube's full length + grip, in cm.
   */
  wire: z
    .strictObject({
      beyondTipCm: z.strictObject({ from: z.number(), to: z.number() }),
      gripCm: z.number(),
      ...sourced,
    })
    .nullable(),
  besideStent: z.strictObject({ says: words, ...sourced }).nullable(),
});
export type PlanningRows = z.infer<typeof planningRowsSchema>;
