import { procedure, router } from "#server/api/trpc.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";
import { changeOnShelf } from "#server/shelf/change-on-shelf.ts";
import { putBackOnShelf, takeOffShelf } from "#server/shelf/shelve.ts";
import { viewShelf } from "#server/shelf/view-shelf.ts";
import { changingShelfSchema, registeringSchema, shelvingSchema } from "#shared/record/act.ts";

/** Nothing of a patient is shown or written. */
const ofShelf = procedure.meta({ subject: { kind: "none" } });

export const shelfRouter = router({
  view: ofShelf.query(({ ctx }) => viewShelf(ctx.db)),
  added: ofShelf.input(registeringSchema).mutation(({ ctx, input }) => addToShelf(ctx, input)),
  changed: ofShelf.input(changingShelfSchema).mutation(({ ctx, input }) => changeOnShelf(ctx, input)),
  takenOff: ofShelf.input(shelvingSchema).mutation(({ ctx, input }) => takeOffShelf(ctx, input)),
  putBack: ofShelf.input(shelvingSchema).mutation(({ ctx, input }) => putBackOnShelf(ctx, input)),
});
