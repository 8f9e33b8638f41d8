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

/** Tubes whose exchange is planned for today; each arm of `isDueToday` must be answered by an index of its own. */
const plannedToday = (orm: Database["orm"]) =>
  inArray(openSteps.tubeId, orm.select({ id: tubes.id }).from(tubes).where(eq(tubes.plannedOn, today)));

const onTime = () => or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today));

/** A call whose days have come, an exchange planned for today, a step whose target has come and whose latest date has not passed. */
const isDueToday = (orm: Database["orm"]) =>
  or(
    and(eq(openSteps.rank, listRank.call), lte(openSteps.dueOn, today)),
    and(eq(openSteps.rank, listRank.clock), lte(openSteps.dueOn, today), onTime()),
    and(plannedToday(orm), eq(openSteps.rank, listRank.clock), onTime()),
  );

const dueToday = prepared((orm) =>
  rows(orm)
    .where(isDueToday(orm))
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
const dueTodayCount = prepared((orm) => counted(orm).where(isDueToday(orm)).prepare());

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
export const stepsDueToday = (db: Database, on: OnDay): readonly StepLine[] => dueToday(db).all(on);
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
  dueToday: dueTodayCount(db).get({ today: on })?.count ?? 0,
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
