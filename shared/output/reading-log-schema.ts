import * as z from "zod";
import { readingSchema } from "#shared/output/reading-schema.ts";

const id = z.string().min(1, "text-missing").max(64, "text-too-long");
const reason = z.string().trim().min(1, "text-missing").max(500, "text-too-long");
const seq = z.int().min(1);

/** One row of the log of readings, which is only ever added to. `seq` is the order in which they were recorded. */
export const readingEntrySchema = z.discriminatedUnion("act", [
  z.strictObject({ act: z.literal("recorded"), seq, reading: readingSchema }),
  z.strictObject({ act: z.literal("replaced"), seq, reading: readingSchema, replaces: id, reason }),
  z.strictObject({ act: z.literal("voided"), seq, id, replaces: id, reason }),
]);
