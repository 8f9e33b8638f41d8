import * as z from "zod";
import { coaxialSorts } from "#shared/fit/coaxial.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { boreSchema, line } from "#shared/tube/facts.ts";

/** The stored form of one thing in a chain. */
export const coaxialSchema = z.strictObject({
  sort: z.enum(coaxialSorts),
  name: line,
  outside: factSchema(lengthSchema),
  tolerance: lengthSchema.nullable(),
  inside: z.strictObject({
    takes: factSchema(lengthSchema),
    takesDevice: factSchema(lengthSchema).optional(),
    bores: z.array(boreSchema).max(8).readonly(),
    endHole: factSchema(z.enum(["open", "closed"])),
  }),
  length: factSchema(lengthSchema),
});
