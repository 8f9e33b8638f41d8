import {
  and,
  asc,
  count,
  eq,
  gte,
  inArray,
  isNull,
  lt,
  lte,
  not,
  notExists,
  or,
  type SQL,
  sql,
} from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { isWithin } from "#db/queries/step-filter.ts";
import { type DuePlace, isOfClock, isUndated } from "#db/queries/step-lists.ts";
import { type Orm, type StepLine, stepRows } from "#db/queries/step-rows.ts";
import { ownOrders } from "#db/schema/own-lists.ts";
import { openSteps, visits } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { everything, isEverything, type ListFilter } from "#shared/record/list-filter.ts";
import type { StepList } from "#shared/step/work-list.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

const today = sql.placeholder("today");
const ofKind = (kind: StepKind) => () => eq(openSteps.kind, kind);

/** The visit's own step, of those from today on that nobody has confirmed. */
const isUnconfirmed = (orm: Orm) =>
  inArray(
    openSteps.id,
    orm
      .select({ id: sql<string>`${visits.id} || ':visit'` })
      .from(visits)
      .where(and(inArray(visits.state, ["proposed", "booked"]), gte(visits.visitOn, today))),
  );

/**
 * Which steps stand in a list. Of what the clocks ask for, the first four share no step: the window is open and the target has not passed; the
 * target has passed and the latest date has not; the latest date has passed; nobody knows a date.
 */
const isIn: Readonly<Record<StepList, (orm: Orm) => SQL | undefined>> = {
  due: () =>
    and(
      isOfClock(),
      gte(openSteps.dueOn, today),
      or(eq(openSteps.dueOn, today), lte(openSteps.earliestOn, today)),
      or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today)),
      not(isUndated() ?? sql`0`),
    ),
  overdue: () =>
    and(
      isOfClock(),
      lt(openSteps.dueOn, today),
      or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today)),
      not(isUndated() ?? sql`0`),
    ),
  "past-latest": () => and(isOfClock(), lt(openSteps.latestOn, today)),
  undated: () => and(isOfClock(), isUndated()),
  unconfirmed: isUnconfirmed,
  "did-not-attend": ofKind("rebook"),
  "handed-over": ofKind("handover"),
  elsewhere: ofKind("confirm what was done elsewhere"),
  prerequisites: ofKind("prepare visit"),
  exchanges: isOfClock,
};

/** The day by which a list sorts. */
const sortsBy = (list: StepList) => (list === "past-latest" ? openSteps.latestOn : openSteps.dueOn);

/** Whose view of which list is asked for, on which day, within which filter. */
export type ListAsked = {
  readonly list: StepList;
  readonly staffId: string;
  readonly today: Day;
  readonly filter: ListFilter;
};

/** At most so many lines behind a place. */
export type Onward = { readonly place: DuePlace; readonly limit: number };

const isOwnPlace = () =>
  and(
    eq(ownOrders.staffId, sql.placeholder("staffId")),
    eq(ownOrders.list, sql.placeholder("list")),
    eq(ownOrders.stepId, openSteps.id),
  );

const within = (orm: Orm, list: StepList, filter: ListFilter) => and(isIn[list](orm), isWithin(orm, filter));

const placedLines = (orm: Orm, list: StepList, filter: ListFilter) =>
  stepRows(orm)
    .innerJoin(ownOrders, isOwnPlace())
    .where(within(orm, list, filter))
    .orderBy(asc(ownOrders.place), asc(openSteps.id))
    .prepare();

const unplacedLines = (orm: Orm, list: StepList, filter: ListFilter) => {
  const by = sortsBy(list);
  const after = sql`(${by}, ${openSteps.id}) > (${sql.placeholder("dueOn")}, ${sql.placeholder("id")})`;
  return stepRows(orm)
    .where(
      and(
        within(orm, list, filter),
        after,
        notExists(orm.select({ place: ownOrders.place }).from(ownOrders).where(isOwnPlace())),
      ),
    )
    .orderBy(asc(by), asc(openSteps.id))
    .limit(sql.placeholder("limit"))
    .prepare();
};

const counted = (orm: Orm, list: StepList, filter: ListFilter) =>
  orm
    .select({ count: count() })
    .from(openSteps)
    .where(within(orm, list, filter))
    .prepare();

/** A statement for each list: made once for everything, made for what a filter asks. */
function byList<Statement>(make: (orm: Orm, list: StepList, filter: ListFilter) => Statement) {
  const made = new Map<StepList, (db: Database) => Statement>();
  return (db: Database, list: StepList, filter: ListFilter): Statement => {
    if (!isEverything(filter)) return make(db.orm, list, filter);
    const known = made.get(list) ?? prepared((orm) => make(orm, list, everything));
    made.set(list, known);
    return known(db);
  };
}

const placedOf = byList(placedLines);
const unplacedOf = byList(unplacedLines);
const countOf = byList(counted);

/** Lines of a list that somebody put in an order of their own, in that order. */
export const placedSteps = (db: Database, { list, filter, ...on }: ListAsked): readonly StepLine[] =>
  placedOf(db, list, filter).all({ ...on, list });

/** The other lines in the list's own order, those behind a place. */
export const unplacedSteps = (
  db: Database,
  { list, filter, ...on }: ListAsked,
  { place, limit }: Onward,
): readonly StepLine[] => unplacedOf(db, list, filter).all({ ...on, ...place, list, limit });

/** How many stand in a list, wherever somebody put them. */
export const stepCount = (
  db: Database,
  { list, filter, today: on }: Pick<ListAsked, "list" | "filter" | "today">,
): number => countOf(db, list, filter).get({ today: on })?.count ?? 0;

/** Where the next page goes on behind a line. */
export const placeOf = (list: StepList, { id, dueOn, latestOn }: StepLine): DuePlace => ({
  dueOn: list === "past-latest" ? (latestOn ?? dueOn) : dueOn,
  id,
});
