import { and, asc, count, eq, gt, gte, inArray, isNull, lt, lte, not, or, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { isWithin } from "#db/queries/step-filter.ts";
import {
  type Asked,
  byDue,
  type Orm,
  type Part,
  part,
  type StepLine,
  stepRows,
} from "#db/queries/step-rows.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { everything, isEverything, type ListFilter } from "#shared/record/list-filter.ts";
import type { DayPart } from "#shared/step/day-part.ts";
import { listRank } from "#shared/step/list-rank.ts";
import { undatedKinds } from "#shared/step/undated.ts";

const today = sql.placeholder("today");

/** What the catheter's clock asks for. */
export const isOfClock = () => eq(openSteps.rank, listRank.clock);
const onTime = () => or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today));
const plannedToday = (orm: Orm) =>
  inArray(openSteps.tubeId, orm.select({ id: tubes.id }).from(tubes).where(eq(tubes.plannedOn, today)));

/** Where the next page of the due list goes on: after this step. */
export type DuePlace = { readonly dueOn: Day; readonly id: string };

/** Before every line. */
export const LIST_START: DuePlace = { dueOn: "1900-01-01" as Day, id: "" };

const afterPlace = sql`(${openSteps.dueOn}, ${openSteps.id}) > (${sql.placeholder("dueOn")}, ${sql.placeholder("id")})`;

const clock = part<Asked & DuePlace>(() => and(isOfClock(), afterPlace));

/** Tubes by what their clock asks for next, the longest due first. */
export const dueSteps = (db: Database, asked: Asked, place: DuePlace = LIST_START): readonly StepLine[] =>
  clock.lines(db, { ...asked, ...place });

/** How many stand in the whole of that list. */
export const dueStepCount = (db: Database, asked: Asked): number =>
  clock.count(db, { ...asked, ...LIST_START });

/** Tubes out, part out, a fragment left behind. */
const urgent = part(() => eq(openSteps.rank, listRank.urgent));

const pastLatest = part(
  () => and(isOfClock(), lt(openSteps.latestOn, today)),
  [asc(openSteps.latestOn), asc(openSteps.id)],
);

/** Exchanges planned for today, whose latest date has not passed. */
const planned = part((orm) =>
  // The plus keeps the planner, which has no statistics, from walking the whole due list for the few planned tubes.
  and(sql`+${openSteps.rank} = ${listRank.clock}`, onTime(), plannedToday(orm)),
);

/** Stands in for a date that nobody knows. */
export const isUndated = () => and(inArray(openSteps.kind, [...undatedKinds]), isNull(openSteps.latestOn));

/** What stands in for a date that nobody knows, those planned for today apart. */
const undated = part((orm) =>
  and(isOfClock(), lte(openSteps.dueOn, today), isUndated(), not(plannedToday(orm))),
);

/** Steps whose target has come and whose latest date has not passed, those planned for today and those without a date apart. */
const due = part((orm) =>
  and(isOfClock(), lte(openSteps.dueOn, today), onTime(), not(isUndated() ?? sql`0`), not(plannedToday(orm))),
);

const calls = part(() => and(eq(openSteps.rank, listRank.call), lte(openSteps.dueOn, today)));

/** What is to be found out for a planned exchange waits until its day. */
const isLooseEnd = () =>
  and(
    eq(openSteps.rank, listRank.looseEnd),
    not(and(eq(openSteps.kind, "find out"), gt(openSteps.dueOn, today)) ?? sql`0`),
  );

/** Exchanges planned for today, then what else has come due. */
const plannedThenDue: Part<Asked> = {
  lines: (db, asked) => {
    const end = asked.skip + asked.limit;
    const fromFirst = { ...asked, skip: 0, limit: end };
    return [...planned.lines(db, fromFirst), ...due.lines(db, fromFirst)].slice(asked.skip, end);
  },
  count: (db, asked) => planned.count(db, asked) + due.count(db, asked),
};

/** What each part of Today holds: its lines, and how many stand behind it. */
export const stepsOfPart: Readonly<Record<DayPart, Part<Asked>>> = {
  out: urgent,
  "past-latest": pastLatest,
  undated,
  visits: part(() => and(eq(openSteps.rank, listRank.visit), lte(openSteps.dueOn, today))),
  due: plannedThenDue,
  calls,
  "loose-ends": part(isLooseEnd),
};

/** What somebody has overnight, beside calls: red flags, tubes out, alarms, and trials that run. */
export const overnight = part(() =>
  inArray(openSteps.kind, ["red flag", "tube out", "part out", "fragment retained", "alarm", "clamp trial"]),
);

const looseEndCounts = (orm: Orm, filter: ListFilter) =>
  orm
    .select({ kind: openSteps.kind, count: count() })
    .from(openSteps)
    .where(and(isLooseEnd(), isWithin(orm, filter)))
    .groupBy(openSteps.kind)
    .orderBy(asc(openSteps.kind))
    .prepare();

const allLooseEndCounts = prepared((orm) => looseEndCounts(orm, everything));

/** How many loose ends there are of each kind. */
export const looseEndKinds = (db: Database, { filter, today }: Pick<Asked, "filter" | "today">) =>
  (isEverything(filter) ? allLooseEndCounts(db) : looseEndCounts(db.orm, filter)).all({ today });

const ofPatient = prepared((orm) =>
  stepRows(orm)
    .where(eq(openSteps.patientId, sql.placeholder("patientId")))
    .orderBy(asc(openSteps.rank), asc(openSteps.dueOn), asc(openSteps.id))
    .prepare(),
);

export const stepLinesOfPatient = (db: Database, patientId: string): readonly StepLine[] =>
  ofPatient(db).all({ patientId });

const ofOwner = prepared((orm) =>
  stepRows(orm)
    .where(eq(openSteps.ownerStaffId, sql.placeholder("staffId")))
    .orderBy(...byDue)
    .prepare(),
);

/** Every step that is somebody's by name, before the account closes. */
export const stepsOwnedBy = (db: Database, staffId: string): readonly StepLine[] =>
  ofOwner(db).all({ staffId });

const byIds = prepared((orm) =>
  stepRows(orm)
    .where(inArray(openSteps.id, sql`(select value from json_each(${sql.placeholder("ids")}))`))
    .prepare(),
);

/** The steps of these ids, in no order. */
export const stepLinesById = (db: Database, ids: readonly string[]): readonly StepLine[] =>
  byIds(db).all({ ids: JSON.stringify(ids) });
