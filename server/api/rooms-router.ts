import { procedure, router } from "#server/api/trpc.ts";
import { askRooms, restoreRooms } from "#server/rooms/change-rooms.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { roomsStory } from "#server/rooms/rooms-story.ts";
import { changingRoomsSchema, restoringRoomsSchema } from "#shared/record/rooms/asked-schema.ts";

/** Nothing of a patient is shown. */
const ofRooms = procedure.meta({ subject: { kind: "none" } });

export const roomsRouter = router({
  view: ofRooms.query(({ ctx }) => roomsOf(ctx.db)),
  history: ofRooms.query(({ ctx }) => roomsStory(ctx.db)),
  change: ofRooms.input(changingRoomsSchema).mutation(({ ctx, input }) => askRooms(ctx, input)),
  restore: ofRooms.input(restoringRoomsSchema).mutation(({ ctx, input }) => restoreRooms(ctx, input)),
});
