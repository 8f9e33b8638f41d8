import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { confirmSeveral } from "#server/dates/confirm-dates.ts";
import { listProposals } from "#server/dates/list-proposals.ts";
import { confirmingSeveralSchema } from "#shared/record/act.ts";

export const proposalRouter = router({
  list: procedure
    .meta({ subject: { kind: "list", name: "proposed dates" } })
    .input(z.strictObject({ page: z.int().min(1).max(10_000) }))
    .query(({ ctx, input }) => listProposals(ctx.db, input)),
  confirm: procedure
    .meta({ subject: { kind: "none" } })
    .input(confirmingSeveralSchema)
    .mutation(({ ctx, input }) => confirmSeveral(ctx, input)),
});
