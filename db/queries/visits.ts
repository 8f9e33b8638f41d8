import { and, asc, eq, gte, lte, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import type { VisitRow } from "#db/queries/projections.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import { openSteps, visits } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";

const taken = prepared((orm) =>
  orm
    .select({
      id: visits.id,
      patientId: visits.patientId,
      roomId: visits.roomId,
      on: visits.visitOn,
      from: visits.fromMinute,
      minutes: visits.minutes,
    })
    .from(visits)
    .where(and(gte(visits.visitOn, sql.placeholder("from")), eq(visits.takesRoom, true)))
    .orderBy(asc(visits.visitOn), asc(visits.fromMinute), asc(visits.id))
    .prepare(),
);

/** What takes the rooms' time from a day on, in order of time. */
export const takenFrom = (db: Database, from: Day) => taken(db).all({ from });

const rows = (orm: Database["orm"]) =>
  orm
    .select({
      visit: visits,
      familyName: patients.familyName,
      givenName: patients.givenName,
      birthOn: patients.birthOn,
      number: patientIdentifiers.value,
      preparing: openSteps.why,
    })
    .from(visits)
    .innerJoin(patients, eq(patients.id, visits.patientId))
    .leftJoin(
      patientIdentifiers,
      and(eq(patientIdentifiers.patientId, visits.patientId), eq(patientIdentifiers.place, 1)),
    )
    .leftJoin(openSteps, eq(openSteps.id, sql`${visits.id} || ':prepare visit'`))
    .$dynamic();

/** A visit with whose it is. */
export type VisitLine = {
  readonly visit: VisitRow;
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly number: string | null;
  /** The why of its step that asks to settle what is open; null where nothing is. */
  readonly preparing: unknown;
};

const ofDays = prepared((orm) =>
  rows(orm)
    .where(and(gte(visits.visitOn, sql.placeholder("from")), lte(visits.visitOn, sql.placeholder("to"))))
    .orderBy(asc(visits.visitOn), asc(visits.fromMinute), asc(visits.id))
    .prepare(),
);

/** Every visit of a span of days, cancelled ones too, in order of time. */
export const visitsOfDays = (
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): readonly VisitLine[] => ofDays(db).all(span);

const allFrom = prepared((orm) =>
  rows(orm)
    .where(gte(visits.visitOn, sql.placeholder("from")))
    .orderBy(asc(visits.visitOn), asc(visits.fromMinute), asc(visits.id))
    .prepare(),
);

/** The same from a day on, with whose they are. */
export const visitLinesFrom = (db: Database, from: Day): readonly VisitLine[] => allFrom(db).all({ from });

const byId = prepared((orm) =>
  rows(orm)
    .where(eq(visits.id, sql.placeholder("id")))
    .prepare(),
);

export const visitLineById = (db: Database, id: string): VisitLine | undefined => byId(db).get({ id });

const rowsFrom = prepared((orm) =>
  orm
    .select()
    .from(visits)
    .where(gte(visits.visitOn, sql.placeholder("from")))
    .orderBy(asc(visits.visitOn), asc(visits.fromMinute), asc(visits.id))
    .prepare(),
);

/** Visits on a day or after it, cancelled ones too. */
export const visitsFrom = (db: Database, from: Day): readonly VisitRow[] => rowsFrom(db).all({ from });

const coming = prepared((orm) =>
  orm
    .select({ id: visits.id })
    .from(visits)
    .where(gte(visits.visitOn, sql.placeholder("from")))
    .limit(1)
    .prepare(),
);

/** Whether any visit, cancelled ones too, lies on a day or after it. */
export const isAnyFrom = (db: Database, from: Day): boolean => coming(db).get({ from }) !== undefined;
