import * as z from "zod";
import { sourced, words } from "#shared/protocol/interval-row.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { abilities } from "#shared/visit/room.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";

const acts = z.array(z.enum(visitActs)).min(1);
const workingDaysBefore = z.int().min(0).max(365);

/** What an act takes of a room; an act of a kind without one is "no row". */
export const roomRowSchema = z.strictObject({
  kinds: z.array(z.enum(tubeKinds)).min(1),
  acts,
  /** Of the first tube of a visit, or of one alone. */
  minutes: z.int().min(1),
  /** Of each further tube of the same visit; null: no row, so that it counts whole. */
  further: z.int().min(1).nullable(),
  /** What the room must be able to do; an empty list is nothing special. */
  needs: z.array(z.enum(abilities)),
  ...sourced,
});
export type RoomRow = z.infer<typeof roomRowSchema>;

/** Something to settle before a visit. Several rows of one thing may speak of a visit: the earliest day and the longest lead count. */
export const prerequisiteRowSchema = z.strictObject({
  thing: z.enum(prerequisiteThings),
  acts,
  /** An empty list is every kind. */
  kinds: z.array(z.enum(tubeKinds)),
  /** Settled by so many working days before the visit; 0 is the day itself. */
  workingDaysBefore,
  /** Hours that it takes before the visit can begin, where it is needed; null where nothing has to be waited for. */
  leadHours: z.int().min(1).max(336).nullable(),
  says: words,
  ...sourced,
});
export type PrerequisiteRow = z.infer<typeof prerequisiteRowSchema>;

/** What comes before a visit. An empty list and null are "no row". */
export const visitRowsSchema = z.strictObject({
  prerequisites: z.array(prerequisiteRowSchema),
  /** The patient has said that they come, by so many working days before. */
  confirmed: z.strictObject({ workingDaysBefore, ...sourced }).nullable(),
});
export type VisitRows = z.infer<typeof visitRowsSchema>;
