import { and, asc, count, eq, gte, inArray, isNull, lt, lte, not, or, sql } from "drizzle-orm";
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

const onTime = () => or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today));

const plannedToday = (orm: Database["orm"]) =>
  inArray(openSteps.tubeId, orm.select({ id: tubes.id }).from(tubes).where(eq(tubes.plannedOn, today)));

/** Exchanges planned for today, whose latest date has not passed. */
const isVisit = (orm: Database["orm"]) =>
  // The plus keeps the planner, which has no statistics, from walking the whole due list for the few planned tubes.
  and(sql`+${openSteps.rank} = ${listRank.clock}`, onTime(), plannedToday(orm));

const visits = prepared((orm) =>
  rows(orm)
    .where(isVisit(orm))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

/** Steps whose target has come and whose latest date has not passed, those planned for today apart. */
const isDue = (orm: Database["orm"]) =>
  and(eq(openSteps.rank, listRank.clock), lte(openSteps.dueOn, today), onTime(), not(plannedToday(orm)));

const due = prepared((orm) =>
  rows(orm)
    .where(isDue(orm))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const isCall = () => and(eq(openSteps.rank, listRank.call), lte(openSteps.dueOn, today));

const calls = prepared((orm) =>
  rows(orm)
    .where(isCall())
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
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
const visitCount = prepared((orm) => counted(orm).where(isVisit(orm)).prepare());
const dueCount = prepared((orm) => counted(orm).where(isDue(orm)).prepare());
const callCount = prepared((orm) => counted(orm).where(isCall()).prepare());

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
/** Exchanges planned for today, then what else has come due. */
export const stepsDueToday = (db: Database, on: OnDay): readonly StepLine[] =>
  [...visits(db).all(on), ...due(db).all(on)].slice(0, on.limit);
/** Calls whose days have come, the longest due first. */
export const callsDueToday = (db: Database, on: OnDay): readonly StepLine[] => calls(db).all(on);
export const looseEndSteps = (db: Database, size: number): readonly StepLine[] =>
  looseEnds(db).all({ limit: size });

export type StepCounts = {
  readonly urgent: number;
  readonly pastLatest: number;
  readonly dueToday: number;
  readonly calls: number;
  readonly looseEnds: readonly { readonly kind: string; readonly count: number }[];
};

const countOf = (row: { readonly count: number } | undefined): number => row?.count ?? 0;

/** How many steps stand behind each part of a day's list, however many of them are shown; loose ends by their kind. */
export const stepCounts = (db: Database, on: Day): StepCounts => ({
  urgent: countOf(urgentCount(db).get()),
  pastLatest: countOf(pastLatestCount(db).get({ today: on })),
  dueToday: countOf(visitCount(db).get({ today: on })) + countOf(dueCount(db).get({ today: on })),
  calls: countOf(callCount(db).get({ today: on })),
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
