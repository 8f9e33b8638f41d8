import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { dayPart } from "#server/lists/day-part.ts";
import { dueList } from "#server/lists/due-list.ts";
import { todayList } from "#server/lists/today-list.ts";
import { whoSawWhat } from "#server/lists/who-saw-what.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import type { FilterName } from "#shared/record/list-filter.ts";
import { dayParts } from "#shared/step/day-part.ts";

const word = z.string().max(200).optional();
const filterSchema = z.strictObject({
  kind: word,
  side: word,
  role: word,
  owner: word,
  service: word,
} satisfies Record<FilterName, typeof word>);
const pageSchema = z.int().min(1).max(1000);
const placeSchema = z.strictObject({ dueOn: daySchema, id: z.string().max(200) });

export const listRouter = router({
  today: procedure
    .meta({ subject: { kind: "list", name: "today" } })
    .input(z.strictObject({ filter: filterSchema.optional() }).optional())
    .query(({ ctx, input }) => todayList(ctx.db, input?.filter ?? {})),
  dayPart: procedure
    .meta({ subject: { kind: "list", name: "today" } })
    .input(z.strictObject({ part: z.enum(dayParts), page: pageSchema, filter: filterSchema.optional() }))
    .query(({ ctx, input }) => dayPart(ctx.db, input)),
  exchanges: procedure
    .meta({ subject: { kind: "list", name: "exchanges" } })
    .input(z.strictObject({ filter: filterSchema.optional(), place: placeSchema.optional() }))
    .query(({ ctx, input }) => dueList(ctx.db, input.filter ?? {}, input.place)),
  whoSawWhat: procedure
    .meta({ subject: { kind: "list", name: "who saw and did what" } })
    .input(z.strictObject({ seen: pageSchema, done: pageSchema }).partial().optional())
    .query(({ ctx, input }) => whoSawWhat(ctx.db, input)),
});
