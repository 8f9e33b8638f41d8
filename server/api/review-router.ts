import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { queuedTubes, viewQueue } from "#server/review/view-queue.ts";
import { viewReview } from "#server/review/view-review.ts";

const oneTube = z.strictObject({ tubeId: z.string().min(1).max(64) });

export const reviewRouter = router({
  queue: procedure.meta({ subject: { kind: "list", name: "reviews" } }).query(({ ctx }) => viewQueue(ctx.db)),
  queued: procedure.meta({ subject: { kind: "none" } }).query(({ ctx }) => queuedTubes(ctx.db)),
  view: procedure
    .meta({ subject: { kind: "tube", key: "tubeId" } })
    .input(oneTube)
    .query(({ ctx, input }) => viewReview(ctx.db, input.tubeId, ctx.staff.id)),
});
