import {
  and,
  asc,
  count,
  eq,
  gte,
  inArray,
  isNotNull,
  isNull,
  lt,
  lte,
  ne,
  or,
  type SQL,
  sql,
} from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";

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

/** Work that hangs on the catheter's clock; a tube without any date stands among it, once. */
const ofTheClock = (): SQL | undefined =>
  or(
    inArray(openSteps.kind, ["exchange", "remove or exchange", "remove", "review"]),
    and(inArray(openSteps.kind, ["assess the date", "no row"]), isNull(tubes.clockEarliest)),
  );

const byDue = [asc(openSteps.dueOn), asc(openSteps.rank), asc(openSteps.id)];

/** Where the next page of the due list goes on: after this step. */
export type DuePlace = { readonly dueOn: Day; readonly rank: number; readonly id: string };

const START: DuePlace = { dueOn: "1900-01-01" as Day, rank: 0, id: "" };

const afterPlace = sql`(${openSteps.dueOn}, ${openSteps.rank}, ${openSteps.id}) > (${sql.placeholder("dueOn")}, ${sql.placeholder("rank")}, ${sql.placeholder("id")})`;

const dueList = prepared((orm) =>
  rows(orm)
    .where(and(afterPlace, ofTheClock()))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

/** Tubes by what their clock asks for next, the longest due first. */
export const dueSteps = (db: Database, size: number, place: DuePlace = START): readonly StepLine[] =>
  dueList(db).all({ ...place, limit: size });

const urgent = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.rank, 0))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const isPastLatest = () =>
  and(lt(openSteps.latestOn, today), eq(openSteps.rank, 1), ne(openSteps.kind, "call"));

const pastLatest = prepared((orm) =>
  rows(orm)
    .where(isPastLatest())
    .orderBy(asc(openSteps.latestOn), asc(openSteps.rank), asc(openSteps.id))
    .limit(limit)
    .prepare(),
);

/** A call in its days, an exchange planned for today, a step whose target has come and whose latest date has not passed. */
const isDueToday = () =>
  and(
    eq(openSteps.rank, 1),
    or(
      and(eq(openSteps.kind, "call"), lte(openSteps.ownerFrom, today)),
      and(
        ne(openSteps.kind, "call"),
        or(
          and(lte(openSteps.dueOn, today), or(isNull(openSteps.latestOn), gte(openSteps.latestOn, today))),
          and(isNotNull(tubes.plannedOn), eq(tubes.plannedOn, today)),
        ),
      ),
    ),
  );

const dueToday = prepared((orm) =>
  rows(orm)
    .where(isDueToday())
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const looseEnds = prepared((orm) =>
  rows(orm)
    .where(eq(openSteps.rank, 2))
    .orderBy(...byDue)
    .limit(limit)
    .prepare(),
);

const kindCounts = prepared((orm) =>
  orm
    .select({ rank: openSteps.rank, kind: openSteps.kind, count: count() })
    .from(openSteps)
    .where(ne(openSteps.rank, 1))
    .groupBy(openSteps.rank, openSteps.kind)
    .orderBy(asc(openSteps.kind))
    .prepare(),
);

const pastLatestCount = prepared((orm) =>
  orm.select({ count: count() }).from(openSteps).where(isPastLatest()).prepare(),
);

const dueTodayCount = prepared((orm) =>
  orm
    .select({ count: count() })
    .from(openSteps)
    .leftJoin(tubes, eq(tubes.id, openSteps.tubeId))
    .where(isDueToday())
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
export function stepCounts(db: Database, on: Day): StepCounts {
  const kinds = kindCounts(db).all();
  const urgentOf = kinds.filter(({ rank }) => rank === 0);
  return {
    urgent: urgentOf.reduce((sum, { count }) => sum + count, 0),
    pastLatest: pastLatestCount(db).get({ today: on })?.count ?? 0,
    dueToday: dueTodayCount(db).get({ today: on })?.count ?? 0,
    looseEnds: kinds.filter(({ rank }) => rank === 2).map(({ kind, count }) => ({ kind, count })),
  };
}

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
