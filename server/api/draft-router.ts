import { procedure, router } from "#server/api/trpc.ts";
import { dropDraft } from "#server/drafts/drop-draft.ts";
import { loadDraft } from "#server/drafts/load-draft.ts";
import { saveDraft } from "#server/drafts/save-draft.ts";
import { draftKeySchema, draftSchema } from "#shared/record/draft.ts";

/** Everyone sees their own drafts only, so none of these shows a patient to somebody new. */
const own = procedure.meta({ subject: { kind: "none" } });

export const draftRouter = router({
  load: own
    .input(draftKeySchema)
    .query(({ ctx, input }) => loadDraft(ctx.db, { ...input, staffId: ctx.staff.id })),
  save: own.input(draftSchema).mutation(({ ctx, input }) => saveDraft(ctx.db, ctx.staff, input)),
  drop: own
    .input(draftKeySchema)
    .mutation(({ ctx, input }) => dropDraft(ctx.db, { ...input, staffId: ctx.staff.id })),
});
