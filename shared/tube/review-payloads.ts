import * as z from "zod";
import { instantSchema } from "#shared/day/instant-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { closable, decidedKinds, decisions } from "#shared/review/decisions.ts";
import { line, note } from "#shared/tube/facts.ts";
import { ownerSchema } from "#shared/tube/owner-schema.ts";

const readingId = z.string().min(1).max(64);
/** More than a tube's readings of years: what was seen is kept whole or not at all. */
const MOST_SEEN = 20_000;

/** Reviews of a tube: asked for, decided, and what was decided done. At their newest payload version. */
export const reviewPayloads = {
  "review asked": z.strictObject({ by: daySchema, askedBy: line.nullable(), reason: note.nullable() }),
  "review decided": z.strictObject({
    decidedBy: line,
    decided: z
      .array(z.strictObject({ what: z.enum(decisions), by: daySchema, owner: ownerSchema }))
      .min(1)
      .max(decisions.length),
    /** In the physician's own words. */
    words: note.nullable(),
    /** Open steps that it answers; no other is closed by it. */
    closes: z.array(z.enum(closable)).max(closable.length),
    /** What was on the screen: readings by the ids that stood then, and the codes of what was concluded. Null where none could be. */
    evidence: z
      .strictObject({
        asOf: instantSchema,
        readings: z.array(readingId).max(MOST_SEEN),
        said: z.array(z.string().min(1).max(400)).max(24),
        protocol: z.int().min(1),
      })
      .nullable(),
  }),
  /** Done, or given up, by somebody: `how` says which. */
  "decision done": z.strictObject({ what: z.enum(decidedKinds), how: line.nullable() }),
} as const;
