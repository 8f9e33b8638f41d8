import * as z from "zod";
import { dayHalves } from "#shared/day/clinic-days.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import { line, note } from "#shared/tube/facts.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { answerStates } from "#shared/visit/prerequisites.ts";
import { abilities } from "#shared/visit/room.ts";
import { visitStates } from "#shared/visit/visit.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";

/** Tubes that one visit can name. */
const MOST_TUBES = 20;
const MINUTES_A_DAY = 1440;

const minute = z.int().min(0).max(MINUTES_A_DAY);
/** The visit that an entry speaks of, by the entry that booked it. */
const ofVisit = { visit: z.string().min(1) };

const place = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("here"),
    roomId: z.string().min(1),
    from: minute,
    minutes: z.int().min(1).max(MINUTES_A_DAY),
  }),
  /** In the hospital's own book, or another's. */
  z.strictObject({ kind: z.literal("elsewhere"), where: line, from: minute.nullable() }),
]);

const slot = { on: daySchema, place, urgent: z.boolean() };

/** What is agreed about coming to the clinic, at the newest payload version. */
export const visitPayloads = {
  "visit booked": z.strictObject({
    tubes: z
      .array(z.strictObject({ tube: z.string().min(1), number: z.int().min(1), act: z.enum(visitActs) }))
      .min(1)
      .max(MOST_TUBES),
    state: z.enum(["proposed", "booked"]),
    ...slot,
    needs: z.array(z.enum(abilities)).max(abilities.length),
    notOn: z
      .array(
        z.strictObject({ weekday: z.literal([1, 2, 3, 4, 5, 6, 7]), half: z.enum(dayHalves).nullable() }),
      )
      .max(14),
    note: note.nullable(),
  }),
  /** To another slot: whoever confirmed the old one has not confirmed the new one. */
  "visit moved": z.strictObject({ ...ofVisit, ...slot, by: line.nullable(), reason: note.nullable() }),
  "visit noted": z.strictObject({
    ...ofVisit,
    state: z.enum(visitStates).exclude(["proposed"]),
    /** Who cancelled, confirmed or told it. */
    by: line.nullable(),
    reason: note.nullable(),
  }),
  "visit prepared": z.strictObject({
    ...ofVisit,
    thing: z.enum(prerequisiteThings),
    state: z.enum(answerStates),
    by: line.nullable(),
    says: note.nullable(),
  }),
} as const;
