import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { roomRowSchema } from "#shared/protocol/visit-rows.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { retentions } from "#shared/tube/vocabulary.ts";

/** What the answers about a plan can say that a row may ask a reason for. */
export const planDoubts = [
  "does not pass",
  "doubt",
  "cannot tell",
  "wire too short",
  "step over the note",
  "immature tract",
] as const;
export type PlanDoubt = (typeof planDoubts)[number];

/** What an exchange is planned with. */
export const planningRowsSchema = z.strictObject({
  room: z.array(roomRowSchema),
  /** Upsizing: the usual step, and the step over which a note is asked. In French. */
  upsize: z
    .strictObject({ usualStepF: z.number().min(0), noteOverF: z.number().min(0), ...sourced })
    .nullable(),
  /**
   * A wire is at least tube length inside (full less external) + beyond the tip + the longer tube's full length + grip, in cm.
   */
  wire: z
    .strictObject({
      beyondTipCm: z.strictObject({ from: z.number().min(0), to: z.number().min(0) }),
      gripCm: z.number().min(0),
      ...sourced,
    })
    .nullable(),
  /** How each way of holding a tube is let go, and what must come out with it. The clinic's own list. */
  release: z.array(
    z.strictObject({
      retentions: z.array(z.enum(retentions)).min(1),
      says: words,
      comesOut: words.nullable(),
      ...sourced,
    }),
  ),
  /** Kinds that are not exchanged over a wire from the skin, and how they are. */
  notOverWire: z.array(z.strictObject({ kinds: z.array(z.enum(tubeKinds)).min(1), says: words, ...sourced })),
  /** How far below and above the planned size a tube is kept ready, in French. */
  readyF: z.strictObject({ below: z.number().min(0), above: z.number().min(0), ...sourced }).nullable(),
  /** Unknown insides of a tube become a loose end when its exchange is planned within so many days. */
  findInsides: z.strictObject({ withinDays: z.int().min(0), ...sourced }).nullable(),
  /** Which answers ask for a reason when the plan goes on all the same, and the reasons on offer, a key each. */
  reasons: z
    .strictObject({ asks: z.array(z.enum(planDoubts)), offered: z.array(words).max(9), ...sourced })
    .nullable(),
  besideStent: z.strictObject({ says: words, ...sourced }).nullable(),
});
export type PlanningRows = z.infer<typeof planningRowsSchema>;
