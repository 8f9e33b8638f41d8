import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";
import { bringToShelf } from "#server/shelf/bring-to-shelf.ts";
import { changeOnShelf } from "#server/shelf/change-on-shelf.ts";
import { previewShelfSheet } from "#server/shelf/preview-shelf-sheet.ts";
import { putBackOnShelf, takeOffShelf } from "#server/shelf/shelve.ts";
import { viewShelf } from "#server/shelf/view-shelf.ts";
import { actIdSchema, changingShelfSchema, registeringSchema, shelvingSchema } from "#shared/record/act.ts";
import { encodings } from "#shared/sheet/encoding.ts";

/** Nothing of a patient is shown or written. */
const ofShelf = procedure.meta({ subject: { kind: "none" } });

const sheetSchema = z.strictObject({
  /** Handed over by the route that takes the upload; nothing that comes as JSON holds bytes. */
  bytes: z.instanceof(Uint8Array),
  encoding: z.enum(encodings).nullable(),
});

const bringingSchema = sheetSchema.extend({ actId: actIdSchema, changes: z.boolean() });

export const shelfRouter = router({
  view: ofShelf.query(({ ctx }) => viewShelf(ctx.db)),
  added: ofShelf.input(registeringSchema).mutation(({ ctx, input }) => addToShelf(ctx, input)),
  changed: ofShelf.input(changingShelfSchema).mutation(({ ctx, input }) => changeOnShelf(ctx, input)),
  takenOff: ofShelf.input(shelvingSchema).mutation(({ ctx, input }) => takeOffShelf(ctx, input)),
  previewed: ofShelf.input(sheetSchema).mutation(({ ctx, input }) => previewShelfSheet(ctx.db, input)),
  broughtIn: ofShelf.input(bringingSchema).mutation(({ ctx, input }) => bringToShelf(ctx, input)),
  putBack: ofShelf.input(shelvingSchema).mutation(({ ctx, input }) => putBackOnShelf(ctx, input)),
});
