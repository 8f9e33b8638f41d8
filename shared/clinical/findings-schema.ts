import * as z from "zod";
import { type MeasureName, measureOf } from "#shared/clinical/measures.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { line, yesNo } from "#shared/tube/facts.ts";
import { feelings, imagingFindings } from "#shared/tube/vocabulary.ts";

/** A figure in its measure's own unit; `asTyped` is what was typed where that was another unit. */
function measured(name: MeasureName) {
  const { least, most } = measureOf(name);
  return factSchema(
    z.strictObject({ value: z.number().min(least).max(most), asTyped: line.nullable() }),
  ).optional();
}
export type Measured = { readonly value: number; readonly asTyped: string | null };

export const imagingSchema = z.strictObject({
  on: daySchema,
  finding: z.enum(imagingFindings),
  words: line.nullable(),
});
export type Imaging = z.infer<typeof imagingSchema>;

/** What was found of the patient at one time. Leaving an item out says nothing of it, recording it as unknown does. */
export const findingsSchema = z.strictObject({
  temperature: measured("temperature"),
  chills: yesNo.optional(),
  feels: factSchema(z.enum(feelings)).optional(),
  pain: measured("pain"),
  jaundice: yesNo.optional(),
  coughOrBreathlessness: yesNo.optional(),
  imaging: factSchema(imagingSchema).optional(),
  antibioticsUntil: factSchema(z.union([daySchema, z.literal("none")])).optional(),
  whiteCells: measured("whiteCells"),
  crp: measured("crp"),
  creatinine: measured("creatinine"),
  bilirubin: measured("bilirubin"),
  sodium: measured("sodium"),
  potassium: measured("potassium"),
  culture: factSchema(line).optional(),
  voidedVolume: measured("voidedVolume"),
});
export type Findings = z.infer<typeof findingsSchema>;
export type FindingName = keyof Findings;
export const findingNames = Object.keys(findingsSchema.shape) as FindingName[];
