import * as z from "zod";
import { coaxialSorts } from "#shared/fit/coaxial.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { boreSchema, line } from "#shared/tube/facts.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { retentions } from "#shared/tube/vocabulary.ts";

/** How many types a clinic may keep: a list that is longer is no shelf. */
export const MOST_TYPES = 5000;

/** One type on the clinic's own shelf, without a maker: what its package or the clinic's caliper says of it. */
export const shelfTypeSchema = z.strictObject({
  sort: z.enum(coaxialSorts),
  /** The clinic's own name for it, one of each. */
  name: line,
  /** The kinds of tube that it is; empty of what is no tube, and of a tube for any kind. */
  kinds: z.array(z.enum(tubeKinds)),
  outside: factSchema(lengthSchema),
  tolerance: lengthSchema.nullable(),
  /** Labelled for a wire up to and including; for a device by its outside. */
  takes: factSchema(lengthSchema),
  takesDevice: factSchema(lengthSchema),
  bores: z.array(boreSchema).max(8),
  endHole: factSchema(z.enum(["open", "closed"])),
  length: factSchema(lengthSchema),
  retention: factSchema(z.enum(retentions)),
});
/** A type as it is typed, before the shelf has it. */
export type NewShelfType = z.infer<typeof shelfTypeSchema>;
export type ShelfType = NewShelfType & { readonly id: string };

/** What is kept of a type beside its sort and name. */
export const shelfFactsSchema = shelfTypeSchema.omit({ sort: true, name: true });
export type ShelfFacts = z.infer<typeof shelfFactsSchema>;
