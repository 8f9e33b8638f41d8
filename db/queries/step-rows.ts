import { and, asc, count, eq, type SQL, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import type { Rows } from "#db/queries/rows.ts";
import { isWithin } from "#db/queries/step-filter.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import { nextVisits, openSteps, tubes, visits } from "#db/schema/projections.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { everything, isEverything, type ListFilter } from "#shared/record/list-filter.ts";
import { listRank } from "#shared/step/list-rank.ts";

type Named = { readonly id: string; readonly name: string };

/** The tubes of a visit for several, whose step is the patient's; of every other step the tube stands in its own columns. */
const visitTubes = sql<
  readonly Named[]
>`case when ${openSteps.tubeId} is null and ${visits.id} is not null then
  (select json_group_array(json_object('id', named.id, 'name', named.name) order by named.name, named.id)
   from json_each(${visits.visit}, '$.tubes') one join tubes named on named.id = one.value ->> 'tubeId')
  else '[]' end`.mapWith((text: string) => JSON.parse(text) as readonly Named[]);

const shown = {
  id: openSteps.id,
  kind: openSteps.kind,
  rank: openSteps.rank,
  earliestOn: openSteps.earliestOn,
  targetOn: openSteps.targetOn,
  latestOn: openSteps.latestOn,
  dueOn: openSteps.dueOn,
  provisional: openSteps.provisional,
  ownerRole: openSteps.ownerRole,
  ownerStaffId: openSteps.ownerStaffId,
  ownerName: staff.fullName,
  ownerFrom: openSteps.ownerFrom,
  escalatesOn: openSteps.escalatesOn,
  physicianOn: openSteps.physicianOn,
  why: openSteps.why,
  pinsProtocol: openSteps.pinsProtocol,
  pinsCalendar: openSteps.pinsCalendar,
  patientId: openSteps.patientId,
  familyName: patients.familyName,
  givenName: patients.givenName,
  birthOn: patients.birthOn,
  number: patientIdentifiers.value,
  tubeId: openSteps.tubeId,
  tubeName: tubes.name,
  clockEarliest: tubes.clockEarliest,
  clockLatest: tubes.clockLatest,
  plannedOn: tubes.plannedOn,
  strip: tubes.strip,
  visitId: visits.id,
  visitState: visits.state,
  visitOn: visits.visitOn,
  visitFrom: visits.fromMinute,
  /** Null of a visit in a room of ours. */
  visitWhere: sql<string | null>`${visits.visit} ->> '$.place.where'`,
  visitTubes,
};

/** A step of a visit is named after it. Of every other step, the visit is the next of its tube. */
const visitOfStep = sql`case ${openSteps.rank} when ${sql.raw(String(listRank.visit))}
  then substr(${openSteps.id}, 1, instr(${openSteps.id}, ':') - 1) else ${nextVisits.visitId} end`;

/** Steps with all that a line of a list shows, before it is said which. */
export const stepRows = (orm: Database["orm"]) =>
  orm
    .select(shown)
    .from(openSteps)
    .innerJoin(patients, eq(patients.id, openSteps.patientId))
    .leftJoin(
      patientIdentifiers,
      and(eq(patientIdentifiers.patientId, openSteps.patientId), eq(patientIdentifiers.place, 1)),
    )
    .leftJoin(tubes, eq(tubes.id, openSteps.tubeId))
    .leftJoin(staff, eq(staff.id, openSteps.ownerStaffId))
    .leftJoin(nextVisits, eq(nextVisits.tubeId, openSteps.tubeId))
    .leftJoin(visits, eq(visits.id, visitOfStep))
    .$dynamic();

/** One open step as lists show it: whose, of which tube, when, with what the dwell strip draws, and the visit. */
export type StepLine = ReturnType<ReturnType<typeof stepRows>["all"]>[number];

const limit = sql.placeholder("limit");
const skip = sql.placeholder("skip");

export type Orm = Database["orm"];

/** What a list is asked for: how it stands on a day, at most so many lines after those skipped, and only what is within the filter. */
export type Asked = Rows & { readonly today: Day; readonly filter: ListFilter };

export const byDue = [asc(openSteps.dueOn), asc(openSteps.id)];

export type Part<On> = {
  readonly lines: (db: Database, on: On) => readonly StepLine[];
  /** How many stand behind it, however many lines are asked for. */
  readonly count: (db: Database, on: On) => number;
};

/** One part of the lists. Made once for everything; with a filter, for what that asks. */
export function part<On extends Asked = Asked>(
  isOfPart: (orm: Orm) => SQL | undefined,
  order: readonly SQL[] = byDue,
): Part<On> {
  const within = (orm: Orm, filter: ListFilter) => and(isOfPart(orm), isWithin(orm, filter));
  const lines = (orm: Orm, filter: ListFilter) =>
    stepRows(orm)
      .where(within(orm, filter))
      .orderBy(...order)
      .limit(limit)
      .offset(skip)
      .prepare();
  const counted = (orm: Orm, filter: ListFilter) =>
    orm.select({ count: count() }).from(openSteps).where(within(orm, filter)).prepare();
  const allLines = prepared((orm) => lines(orm, everything));
  const allCounted = prepared((orm) => counted(orm, everything));
  return {
    lines: (db, { filter, ...on }) => (isEverything(filter) ? allLines(db) : lines(db.orm, filter)).all(on),
    count: (db, { filter, ...on }) =>
      (isEverything(filter) ? allCounted(db) : counted(db.orm, filter)).get(on)?.count ?? 0,
  };
}
