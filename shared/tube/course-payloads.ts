import * as z from "zod";
import { amountSchema } from "#shared/output/microlitre-schema.ts";
import { fluidTestedSchema } from "#shared/review/fluid-test-schema.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { MOST_BALLOON_ML } from "#shared/tube/entry-limits.ts";
import { line, note, told, yesNo } from "#shared/tube/facts.ts";
import { flushWents, modes, suctionModes } from "#shared/tube/vocabulary.ts";

const noted = { note: note.nullable() };
const ml = factSchema(z.number().min(0).max(MOST_BALLOON_ML));

/** What happens to a tube between one exchange and the next, at its newest payload version. */
export const coursePayloads = {
  repositioned: z.strictObject({
    externalLength: factSchema(lengthSchema),
    /** "under imaging", "at the bedside". */
    seenHow: line.nullable(),
    ...noted,
  }),
  flushed: z.strictObject({
    given: factSchema(amountSchema),
    went: z.enum(flushWents),
    cameBack: yesNo,
    ...told,
    ...noted,
  }),
  unblocked: z.strictObject({ how: line.nullable(), ...noted }),
  "clamp trial started": z.strictObject({ covers: line.nullable(), bagAtHome: yesNo, ...noted }),
  "clamp trial passed": z.strictObject({ mode: z.enum(modes), ...noted }),
  "clamp trial failed": z.strictObject({ mode: z.enum(modes), ...noted }),
  "suction changed": z.strictObject({ mode: z.enum(suctionModes), pressure: line.nullable(), ...noted }),
  /** Water found before anything was added, and what the balloon holds after. */
  "balloon checked": z.strictObject({ found: ml, refilled: ml, ...noted }),
  "anchors removed": z.strictObject({
    what: line,
    /** What holds it at the skin from now on; left out, that is unknown. */
    fixation: factSchema(line).optional(),
    ...noted,
  }),
  blocked: z.strictObject({ ...told, ...noted }),
  leaking: z.strictObject({ soaking: yesNo, ...told, ...noted }),
  infected: z.strictObject({ fever: yesNo, ...told, ...noted }),
  bled: z.strictObject({ heavy: yesNo, ...told, ...noted }),
  broken: z.strictObject({ fragmentInside: yesNo, part: line.nullable(), ...told, ...noted }),
  "fluid tested": fluidTestedSchema,
} as const;
