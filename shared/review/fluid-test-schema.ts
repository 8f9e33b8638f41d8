import * as z from "zod";
import { whenSchema } from "#shared/day/when-schema.ts";
import { analytes } from "#shared/review/analyte.ts";
import type { Concentration } from "#shared/review/concentration.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { line, note, told } from "#shared/tube/facts.ts";

const concentrationSchema = z.custom<Concentration>(
  (value) => Number.isSafeInteger(value) && Number(value) >= 0,
);

/** A value of the laboratory. `level` is null where nobody told the unit; `asTyped` is what was typed, null where it was typed in the own unit. */
const testValueSchema = z
  .strictObject({ level: concentrationSchema.nullable(), asTyped: line.nullable() })
  .refine(({ level, asTyped }) => level !== null || asTyped !== null);
export type TestValue = z.infer<typeof testValueSchema>;

/** One analyte: in the fluid, in serum where that was measured, and for amylase the upper limit of the laboratory's serum range. */
const fluidResultSchema = z
  .strictObject({
    analyte: z.enum(analytes),
    fluid: factSchema(testValueSchema),
    serum: factSchema(testValueSchema).nullable(),
    upperLimit: factSchema(testValueSchema).nullable(),
  })
  .refine(({ analyte, upperLimit }) => analyte === "amylase" || upperLimit === null);
export type FluidResult = z.infer<typeof fluidResultSchema>;

/** What the laboratory found in the fluid of one tube. */
export const fluidTestedSchema = z.strictObject({
  results: z
    .array(fluidResultSchema)
    .min(1)
    .refine((results) => new Set(results.map(({ analyte }) => analyte)).size === results.length),
  /** When the serum was taken; null: on the same day as the fluid. */
  serumOn: whenSchema.nullable(),
  ...told,
  note: note.nullable(),
});
