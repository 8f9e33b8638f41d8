import * as z from "zod";
import { zoneSchema } from "#shared/day/instant-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { MOST_TELEPHONES, NAME_LIMIT, NUMBER_LIMIT } from "#shared/record/patient/limits.ts";
import { LINE_LIMIT } from "#shared/tube/entry-limits.ts";

const name = z.string().trim().min(1, "text-missing").max(NAME_LIMIT, "text-too-long");
const number = z.string().trim().min(1, "text-missing").max(NUMBER_LIMIT, "text-too-long");
const line = z.string().trim().min(1, "text-missing").max(LINE_LIMIT, "text-too-long").nullable();

/** What the column `contact` of a patient holds. */
export const contactSchema = z.strictObject({
  telephones: z.array(z.strictObject({ number, bestTimes: line })).max(MOST_TELEPHONES),
  /** Whoever is called when the patient is not reached; `mayBeTold` null where nobody asked the patient. */
  alternate: z.strictObject({ name, telephone: line, mayBeTold: z.boolean().nullable() }).nullable(),
  homeNurse: line,
  referrer: line,
  familyDoctor: line,
  responsibleService: line,
  /** The zone of the patient's own clock, where somebody said that it is another than the clinic's. */
  livesIn: zoneSchema.optional(),
});
export type Contact = z.infer<typeof contactSchema>;

/**
 * Who somebody is and how they are reached. Record numbers are text: leading zeros are kept. A birth date that is not known is
 * null, and nobody is then taken for a child.
 */
export const patientDetailsSchema = z.strictObject({
  familyName: name,
  givenName: name,
  birthOn: daySchema.nullable(),
  identifiers: z
    .array(z.strictObject({ issuer: name, value: number }))
    .min(1)
    .max(2),
  /** Blank where nobody said. */
  language: z.string().trim().max(NAME_LIMIT, "text-too-long"),
  /** Null where nobody was asked, or nobody knows. */
  needsInterpreter: z.boolean().nullable(),
  contact: contactSchema,
});
export type PatientDetails = z.infer<typeof patientDetailsSchema>;
