import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { dropDraft, viewDraft } from "#server/protocol/draft.ts";
import { draftImpact } from "#server/protocol/draft-impact.ts";
import { protocolStory } from "#server/protocol/protocol-story.ts";
import { signDraft } from "#server/protocol/sign-draft.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { aboutDraftSchema, signingSchema } from "#shared/record/act.ts";

/** Nothing of a patient is shown. */
const ofTable = procedure.meta({ subject: { kind: "none" } });

export const protocolRouter = router({
  view: ofTable.query(({ ctx }) => viewProtocol(ctx.db)),
  history: ofTable.query(({ ctx }) => protocolStory(ctx.db)),
  draft: ofTable.query(({ ctx }) => viewDraft(ctx.db)),
  dropDraft: ofTable.input(aboutDraftSchema).mutation(({ ctx, input }) => dropDraft(ctx, input)),
  impact: procedure
    .meta({ subject: { kind: "list", name: "whom a draft of the protocol touches" } })
    .input(z.strictObject({ page: z.int().min(1).max(10_000) }))
    .query(({ ctx, input }) => draftImpact(ctx.db, input)),
  sign: ofTable.input(signingSchema).mutation(({ ctx, input }) => signDraft(ctx, input)),
});
