import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { answerSheet } from "#server/sheet/answer-sheet.ts";
import { bringIn } from "#server/sheet/bring-in.ts";
import { dropSheet } from "#server/sheet/drop-sheet.ts";
import { keepSheet } from "#server/sheet/keep-sheet.ts";
import { listSheets } from "#server/sheet/list-sheets.ts";
import { progressOf, withProgress } from "#server/sheet/progress.ts";
import { setAsideOf } from "#server/sheet/set-aside.ts";
import { takingBack } from "#server/sheet/taking-back.ts";
import { viewSheet } from "#server/sheet/view-sheet.ts";
import { answersSchema } from "#shared/sheet/answers.ts";
import { encodings } from "#shared/sheet/encoding.ts";

const id = z.string().min(1).max(64);
const ofSheet = z.strictObject({ sheetId: id });
const writing = procedure.meta({ subject: { kind: "none" } });

const broughtSchema = z.strictObject({
  fileName: z.string().trim().min(1).max(200),
  /** Handed over by the route that takes the upload; nothing that comes as JSON holds bytes. */
  bytes: z.instanceof(Uint8Array),
  encoding: z.enum(encodings).nullable(),
});

export const sheetRouter = router({
  list: procedure
    .meta({ subject: { kind: "list", name: "lists brought in" } })
    .query(({ ctx }) => listSheets(ctx.db)),
  takingBack: procedure
    .meta({ subject: { kind: "list", name: "a list brought in" } })
    .input(z.strictObject({ actId: id }))
    .query(({ ctx, input }) => takingBack(ctx.db, input.actId)),
  view: procedure
    .meta({ subject: { kind: "list", name: "a list to bring in" } })
    .input(ofSheet.extend({ page: z.int().min(0).max(1000) }))
    .query(({ ctx, input }) => viewSheet(ctx.db, input)),
  setAside: procedure
    .meta({ subject: { kind: "export", name: "rows set aside" } })
    .input(ofSheet)
    .query(({ ctx, input }) => setAsideOf(ctx.db, input.sheetId)),
  progress: writing.input(ofSheet).query(({ input }) => progressOf(input.sheetId)),
  keep: writing.input(broughtSchema).mutation(({ ctx, input }) => keepSheet(ctx, input)),
  answer: writing
    .input(ofSheet.extend({ answers: answersSchema }))
    .mutation(({ ctx, input }) => answerSheet(ctx, input)),
  drop: writing.input(ofSheet).mutation(({ ctx, input }) => dropSheet(ctx.db, input.sheetId)),
  bringIn: writing
    .input(ofSheet.extend({ actId: id }))
    .mutation(({ ctx, input }) => withProgress(input.sheetId, (telling) => bringIn(ctx, input, telling))),
});
