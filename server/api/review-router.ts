import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { placeInQueue } from "#server/review/place-in-queue.ts";
import { viewQueue } from "#server/review/view-queue.ts";
import { viewReview } from "#server/review/view-review.ts";

const oneTube = z.strictObject({ tubeId: z.string().min(1).max(64) });

export const reviewRouter = router({
  queue: procedure
    .meta({ subject: { kind: "list", name: "reviews" } })
    .input(z.strictObject({ page: z.int().min(1).max(1000) }))
    .query(({ ctx, input }) => viewQueue(ctx.db, input.page)),
  place: procedure
    .meta({ subject: { kind: "tube", key: "tubeId" } })
    .input(oneTube)
    .query(({ ctx, input }) => placeInQueue(ctx.db, input.tubeId)),
  view: procedure
    .meta({ subject: { kind: "tube", key: "tubeId" } })
    .input(oneTube)
    .query(({ ctx, input }) => viewReview(ctx.db, input.tubeId, ctx.staff.id)),
});
