import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { changeDraftRow, dropDraftRow, noteDraft } from "#server/protocol/change-draft-row.ts";
import { dropDraft, viewDraft } from "#server/protocol/draft.ts";
import { draftImpact } from "#server/protocol/draft-impact.ts";
import { bringProtocolFile, draftFile } from "#server/protocol/file/bring-protocol-file.ts";
import { protocolStory } from "#server/protocol/protocol-story.ts";
import { signDraft } from "#server/protocol/sign-draft.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import {
  aboutDraftSchema,
  changingDraftRowSchema,
  droppingDraftRowSchema,
  notingDraftSchema,
  signingSchema,
} from "#shared/record/act.ts";

/** Nothing of a patient is shown. */
const ofTable = procedure.meta({ subject: { kind: "none" } });

const bringingSchema = aboutDraftSchema.extend({
  /** Handed over by the route that takes the upload; nothing that comes as JSON holds bytes. */
  bytes: z.instanceof(Uint8Array),
});

export const protocolRouter = router({
  view: ofTable.query(({ ctx }) => viewProtocol(ctx.db)),
  history: ofTable.query(({ ctx }) => protocolStory(ctx.db)),
  draft: ofTable.query(({ ctx }) => viewDraft(ctx.db)),
  changeRow: ofTable.input(changingDraftRowSchema).mutation(({ ctx, input }) => changeDraftRow(ctx, input)),
  dropRow: ofTable.input(droppingDraftRowSchema).mutation(({ ctx, input }) => dropDraftRow(ctx, input)),
  noteDraft: ofTable.input(notingDraftSchema).mutation(({ ctx, input }) => noteDraft(ctx, input)),
  file: ofTable.query(({ ctx }) => draftFile(ctx.db)),
  bringFile: ofTable.input(bringingSchema).mutation(({ ctx, input }) => bringProtocolFile(ctx, input)),
  dropDraft: ofTable.input(aboutDraftSchema).mutation(({ ctx, input }) => dropDraft(ctx, input)),
  impact: procedure
    .meta({ subject: { kind: "list", name: "whom a draft of the protocol touches" } })
    .input(z.strictObject({ page: z.int().min(1).max(10_000) }))
    .query(({ ctx, input }) => draftImpact(ctx.db, input)),
  sign: ofTable.input(signingSchema).mutation(({ ctx, input }) => signDraft(ctx, input)),
});
