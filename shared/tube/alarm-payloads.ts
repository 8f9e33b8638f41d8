import * as z from "zod";
import { instantSchema } from "#shared/day/instant-schema.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { line, note } from "#shared/tube/facts.ts";
import { alarmDones, usualRows } from "#shared/tube/vocabulary.ts";

/** Reasons of one tube's alarm that one entry can answer. */
export const MOST_ANSWERED = 400;

/** More than any tube drains in a day; what lies between it and the row is a clinician's to say. */
const MOST_ML_PER_24H = 20_000;

/** One reason by its key, with its evidence up to then; null where the key stands for all of it. */
export const answeredSchema = z.strictObject({
  key: z.string().min(1).max(200),
  until: instantSchema.nullable(),
});

/** What a person says of an alarm, at its newest payload version. */
export const alarmPayloads = {
  /** Answers the reasons that it names, and no other: new evidence speaks again. */
  "alarm closed": z.strictObject({
    answers: z.array(answeredSchema).min(1).max(MOST_ANSWERED),
    done: z.enum(alarmDones),
    /** Who did it or decided it. */
    by: line,
    note: note.nullable(),
  }),
  "usual level accepted": z.strictObject({
    row: z.enum(usualRows),
    mlPer24h: z.number().positive().max(MOST_ML_PER_24H),
    until: daySchema,
    acceptedBy: line,
    note: note.nullable(),
  }),
} as const;
