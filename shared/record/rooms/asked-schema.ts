import * as z from "zod";
import { actIdSchema, submitSchema } from "#shared/record/act.ts";

const { texts } = submitSchema.shape;
/** 0: no version of the rooms yet. */
const version = z.int().min(0);
const roomId = z.string().min(1).max(64);

export const roomsAskedSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("add"), texts }),
  z.strictObject({ kind: z.literal("change"), roomId, texts }),
  z.strictObject({ kind: z.literal("take away"), roomId }),
]);

/** `seen`: the version of the rooms that the page showed. */
export const changingRoomsSchema = z.strictObject({
  actId: actIdSchema,
  seen: version,
  asked: roomsAskedSchema,
});
/** `version`: what stood before, and is to stand again. */
export const restoringRoomsSchema = z.strictObject({ actId: actIdSchema, seen: version, version });

export type ChangingRooms = z.infer<typeof changingRoomsSchema>;
export type RestoringRooms = z.infer<typeof restoringRoomsSchema>;
