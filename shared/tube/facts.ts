import * as z from "zod";
import { places, stateConcerns } from "#shared/fit/inside.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { LINE_LIMIT, MOST_BALLOON_ML, NOTE_LIMIT } from "#shared/tube/entry-limits.ts";
import { characters, retentions } from "#shared/tube/vocabulary.ts";

export const line = z.string().trim().min(1).max(LINE_LIMIT);
export const note = z.string().trim().min(1).max(NOTE_LIMIT);

export const yesNo = factSchema(z.boolean());

/** Who told it, where nobody here saw it. */
export const told = { toldBy: line.optional() };

export const boreSchema = z.strictObject({
  place: z.enum(places),
  inside: factSchema(lengthSchema),
  tolerance: lengthSchema.nullable(),
});

/**
 * What can be recorded of the tube itself. Each is left out when nobody spoke of it: leaving a fact out changes nothing,
 * recording it as unknown does. Confirming the size says nothing of the inside.
 */
export const tubeFactsSchema = z.strictObject({
  size: factSchema(lengthSchema).optional(),
  takes: factSchema(lengthSchema).optional(),
  bores: z.array(boreSchema).max(8).optional(),
  endHole: factSchema(z.enum(["open", "closed"])).optional(),
  fullLength: factSchema(lengthSchema).optional(),
  externalLength: factSchema(lengthSchema).optional(),
  retention: factSchema(z.enum(retentions)).optional(),
  balloonMl: factSchema(z.number().min(0).max(MOST_BALLOON_ML)).optional(),
  fixation: factSchema(line).optional(),
  /** What is ordered to flush, in words, or "none". An order is never subtracted. */
  flushOrder: factSchema(line).optional(),
  expectedFluid: z.array(z.enum(characters)).optional(),
});
export type TubeFacts = z.infer<typeof tubeFactsSchema>;

export const concernsSchema = z.array(z.enum(stateConcerns)).max(stateConcerns.length);
