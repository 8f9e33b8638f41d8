import { and, asc, count, eq, gte, inArray, isNull, lt, lte, or, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import { listRank } from "#shared/step/list-rank.ts";

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
};

const rows = (orm: Database["orm"]) =>
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
    .$dynamic();

/** One open step as lists show it: whose, of which tube, when, with what the dwell strip draws. */
export type StepLine = ReturnType<ReturnType<typeof rows>["all"]>[number];

const today = sql.placeholder("today");
const limit = sql.placeholder("limit");

const byDue = [asc(openSteps.dueOn), asc(openSteps.id)];

/** Where the next page of the due list goes on: after this step. */
export type DuePlace = { readonly dueOn: Day; readonly id: string };

const START: DuePlace = { dueOn: "1900-01-01" as Day, id: "" };

const afterPlace = sql`(${openSteps.dueOn}, ${openSteps.id}) > (${sql.placeholder("dueOn")}, ${sql.placeholder("id")})`;

const dueList = prepared((orm) =>
  rows(orm)
    .where(and(eq(openSteps.rank, listRank.clock), afterPlace))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

/** Tubes by what their clock asks for next, the longest due first. */
export const dueSteps = (db: Database, size: number, place: DuePlace = START): readonly StepLine[] =>
  dueList(db).all({ ...place, limit: size });

const urgent = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.rank, listRank.urgent))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const isPastLatest = () => and(eq(openSteps.rank, listRank.clock), lt(openSteps.latestOn, today));

const pastLatest = prepared((orm) =>
  rows(orm).where(isPastLatest()).orderBy(asc(openSteps.latestOn), asc(openSteps.id)).limit(limit).prepare(),
);

/**
 * The parts of today's work, none overlapping another: calls whose days have come; steps whose target has come and whose latest
 * date has not passed; exchanges planned for today before their target. Apart, since each has its own index and its own order
 * by day; as one condition, every overdue call of years would be joined and sorted to show forty lines.
 */
const partsOfToday = [
  () => and(eq(openSteps.rank, listRank.call), lte(openSteps.dueOn, today)),
  () => and(eq(openSteps.rank, listRank.clock), lte(openSteps.dueOn, today), onTime()),
  (orm: Database["orm"]) =>
    and(
      // The plus keeps the planner, which has no statistics, from walking the whole due list for the few planned tubes.
      sql`+${openSteps.rank} = ${listRank.clock}`,
      sql`+${openSteps.dueOn} > ${today}`,
      onTime(),
      inArray(openSteps.tubeId, orm.select({ id: tubes.id }).from(tubes).where(eq(tubes.plannedOn, today))),
    ),
] as const;

const onTime = () => or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today));

const dueToday = partsOfToday.map((part) =>
  prepared((orm) =>
    rows(orm)
      .where(part(orm))
      .orderBy(...byDue)
      .limit(limit)
      .prepare(),
  ),
);

const looseEnds = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.rank, listRank.looseEnd))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const counted = (orm: Database["orm"]) => orm.select({ count: count() }).from(openSteps).$dynamic();

const urgentCount = prepared((orm) => counted(orm).where(eq(openSteps.rank, listRank.urgent)).prepare());
const pastLatestCount = prepared((orm) => counted(orm).where(isPastLatest()).prepare());
const dueTodayCounts = partsOfToday.map((part) => prepared((orm) => counted(orm).where(part(orm)).prepare()));

const looseEndCounts = prepared((orm) =>
  orm
    .select({ kind: openSteps.kind, count: count() })
    .from(openSteps)
    .where(eq(openSteps.rank, listRank.looseEnd))
    .groupBy(openSteps.kind)
    .orderBy(asc(openSteps.kind))
    .prepare(),
);

export type OnDay = { readonly today: Day; readonly limit: number };

/** Tubes out, part out, a fragment left behind. */
export const urgentSteps = (db: Database, size: number): readonly StepLine[] =>
  urgent(db).all({ limit: size });
export const stepsPastLatest = (db: Database, on: OnDay): readonly StepLine[] => pastLatest(db).all(on);

const isBefore = (a: StepLine, b: StepLine): boolean =>
  a.dueOn === b.dueOn ? a.id < b.id : a.dueOn < b.dueOn;

export const stepsDueToday = (db: Database, on: OnDay): readonly StepLine[] =>
  dueToday
    .flatMap((part) => part(db).all(on))
    .toSorted((a, b) => (isBefore(a, b) ? -1 : 1))
    .slice(0, on.limit);

export const looseEndSteps = (db: Database, size: number): readonly StepLine[] =>
  looseEnds(db).all({ limit: size });

export type StepCounts = {
  readonly urgent: number;
  readonly pastLatest: number;
  readonly dueToday: number;
  readonly looseEnds: readonly { readonly kind: string; readonly count: number }[];
};

/** How many steps stand behind each part of a day's list, however many of them are shown; loose ends by their kind. */
export const stepCounts = (db: Database, on: Day): StepCounts => ({
  urgent: urgentCount(db).get()?.count ?? 0,
  pastLatest: pastLatestCount(db).get({ today: on })?.count ?? 0,
  dueToday: dueTodayCounts.reduce((sum, part) => sum + (part(db).get({ today: on })?.count ?? 0), 0),
  looseEnds: looseEndCounts(db).all(),
});

const ofPatient = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.patientId, sql.placeholder("patientId")))
    .orderBy(asc(openSteps.rank), asc(openSteps.dueOn), asc(openSteps.id))
    .prepare(),
);

export const stepLinesOfPatient = (db: Database, patientId: string): readonly StepLine[] =>
  ofPatient(db).all({ patientId });

const ofOwner = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.ownerStaffId, sql.placeholder("staffId")))
    .orderBy(...byDue)
    .prepare(),
);

/** Every step that is somebody's by name, before the account closes. */
export const stepsOwnedBy = (db: Database, staffId: string): readonly StepLine[] =>
  ofOwner(db).all({ staffId });
