import * as z from "zod";
import { aboutPatientSchema } from "#shared/record/act.ts";

const id = z.string().min(1).max(64);

/** `flagId`: the entry that raised it. */
export const aboutFlagSchema = z.strictObject({ ...aboutPatientSchema.shape, flagId: id });
export const flagQuerySchema = z.strictObject({ patientId: id, flagId: id });
export const ofPatientQuerySchema = z.strictObject({ patientId: id });

export type AboutFlag = z.infer<typeof aboutFlagSchema>;
