import * as z from "zod";
import { instantSchema, zoneSchema } from "#shared/day/instant-schema.ts";
import { amountSchema, microlitresSchema } from "#shared/output/microlitre-schema.ts";
import { airLeaks, leaks, measuredBy, otherFluids, sessionSymptoms, swings } from "#shared/output/reading.ts";
import { factSchema } from "#shared/tube/certainty-schema.ts";
import { characters } from "#shared/tube/vocabulary.ts";

const id = z.string().min(1, "text-missing").max(64, "text-too-long");

/** An amount of flush, that there was none, or that nobody wrote it down. Ordered is not given. */
export const flushSchema = z.union([
  z.strictObject({ ul: amountSchema, estimated: z.boolean() }),
  z.enum(["none", "not recorded"]),
]);

/**
 * One emptying or session of one tube. `gross` is what was measured, or already the net of another chart when `basis` says
 * so; only then may it be negative. `flushWithdrawn` was drawn back into a syringe and is not part of `gross`. All volumes
 * are microlitres, `from` and `to` instants with the zone that they were entered in.
 */
export const readingSchema = z
  .strictObject({
    id,
    tubeId: id,
    from: z.union([instantSchema, z.literal("since last emptying")]),
    to: instantSchema,
    zone: zoneSchema,
    gross: factSchema(microlitresSchema),
    basis: z.enum(["gross", "already net"]),
    flushGiven: flushSchema,
    flushWithdrawn: flushSchema,
    otherIn: z.array(z.strictObject({ fluid: z.enum(otherFluids), ul: amountSchema })).max(12),
    measuredBy: z.enum(measuredBy),
    characters: z.array(z.enum(characters)).max(characters.length),
    leak: z.enum(leaks),
    // Readings that were logged before these were asked do not have them.
    airLeak: z.enum(airLeaks).default("not recorded"),
    swing: z.enum(swings).default("not recorded"),
    /** What was felt during a session; an empty list: nothing. */
    symptoms: z
      .union([z.array(z.enum(sessionSymptoms)).max(sessionSymptoms.length), z.literal("not recorded")])
      .default("not recorded"),
    /** What was drawn off at the placement itself, even when it sits in the first bag: told apart, no output. */
    procedureAspirate: z.boolean(),
    reportedBy: z.string().trim().min(1, "text-missing").max(120, "text-too-long"),
    asSpoken: z.string().trim().max(200, "text-too-long"),
  })
  .refine((reading) => reading.from === "since last emptying" || reading.from < reading.to, {
    message: "reading-ends-before-start",
    path: ["to"],
  })
  .refine(
    ({ basis, gross }) => basis === "already net" || gross.certainty === "unknown" || gross.value >= 0,
    { message: "volume-negative", path: ["gross"] },
  );
