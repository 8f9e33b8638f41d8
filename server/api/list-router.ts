import * as z from "zod";
import { procedure, router } from "#server/api/trpc.ts";
import { listFile } from "#server/export/csv/list-table.ts";
import { dayPart } from "#server/lists/day-part.ts";
import { dueList } from "#server/lists/due-list.ts";
import { dropOwnOrder, putLine } from "#server/lists/own-order.ts";
import { dropFilter, saveFilter } from "#server/lists/saved-filters.ts";
import { todayList } from "#server/lists/today-list.ts";
import { whoSawWhat } from "#server/lists/who-saw-what.ts";
import { allLists, workList } from "#server/lists/work-list.ts";
import { daySchema } from "#shared/day/when-schema.ts";
import type { FilterName } from "#shared/record/list-filter.ts";
import { dayParts } from "#shared/step/day-part.ts";
import { stepLists, workLists } from "#shared/step/work-list.ts";

const word = z.string().max(200).optional();
const filterSchema = z.strictObject({
  kind: word,
  side: word,
  role: word,
  owner: word,
  service: word,
  visit: word,
} satisfies Record<FilterName, typeof word>);
const pageSchema = z.int().min(1).max(1000);
const placeSchema = z.strictObject({ dueOn: daySchema, id: z.string().max(200) });

const listOf = { list: z.enum(stepLists), filter: filterSchema.optional() };
const lineId = z.string().min(1).max(200);
const orderOf = { list: z.enum(workLists) };
const ownPlaceSchema = z.discriminatedUnion("at", [
  z.strictObject({ at: z.literal("first") }),
  z.strictObject({ at: z.enum(["before", "behind"]), of: lineId }),
  z.strictObject({ at: z.literal("its own") }),
]);

/** How one person looks at lists: nothing of a patient is shown or changed. */
const own = procedure.meta({ subject: { kind: "none" } });

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
    .query(({ ctx, input }) => dueList(ctx.db, ctx.staff, input)),
  all: own
    .input(z.strictObject({ filter: filterSchema.optional() }))
    .query(({ ctx, input }) => allLists(ctx.db, ctx.staff, input.filter)),
  work: procedure
    .meta({ subject: { kind: "list", key: "list" } })
    .input(z.strictObject({ ...listOf, list: z.enum(workLists), place: placeSchema.optional() }))
    .query(({ ctx, input }) => workList(ctx.db, ctx.staff, input)),
  /** Asked for before a file is sent: whether this person may have it, written down that they took it. */
  file: procedure
    .meta({ subject: { kind: "export", key: "list" } })
    .input(z.strictObject(listOf))
    .query(({ ctx, input }) => listFile(ctx.db, ctx.staff, input)),
  filterSaved: own
    .input(z.strictObject({ list: z.enum(stepLists), name: z.string().max(1000), filter: filterSchema }))
    .mutation(({ ctx, input }) => saveFilter(ctx, input)),
  filterDropped: own
    .input(z.strictObject({ id: lineId }))
    .mutation(({ ctx, input }) => dropFilter(ctx, input)),
  linePut: own
    .input(z.strictObject({ ...orderOf, stepId: lineId, place: ownPlaceSchema }))
    .mutation(({ ctx, input }) => putLine(ctx, input)),
  ownOrderDropped: own.input(z.strictObject(orderOf)).mutation(({ ctx, input }) => dropOwnOrder(ctx, input)),
  whoSawWhat: procedure
    .meta({ subject: { kind: "list", name: "who saw and did what" } })
    .input(z.strictObject({ seen: pageSchema, done: pageSchema }).partial().optional())
    .query(({ ctx, input }) => whoSawWhat(ctx.db, input)),
});
