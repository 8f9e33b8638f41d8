import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { dueList } from "#server/lists/due-list.ts";
import { todayList } from "#server/lists/today-list.ts";
import { whoSawWhat } from "#server/lists/who-saw-what.ts";
import { daySchema } from "#shared/day/when-schema.ts";

const placeSchema = z.strictObject({ dueOn: daySchema, id: z.string().max(200) });

export const listRouter = router({
  today: procedure.meta({ subject: { kind: "list", name: "today" } }).query(({ ctx }) => todayList(ctx.db)),
  exchanges: procedure
    .meta({ subject: { kind: "list", name: "exchanges" } })
    .input(z.strictObject({ place: placeSchema.optional() }))
    .query(({ ctx, input }) => dueList(ctx.db, input.place)),
  whoSawWhat: procedure
    .meta({ subject: { kind: "list", name: "who saw and did what" } })
    .query(({ ctx }) => whoSawWhat(ctx.db)),
});
