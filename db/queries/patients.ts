import { and, asc, desc, eq, inArray, isNotNull, isNull, or, type SQL, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { serviceOf } from "#db/queries/step-filter.ts";
import { patientChanges, patientIdentifiers, patients } from "#db/schema/patients.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Sought } from "#shared/record/finder.ts";

export type PatientRow = typeof patients.$inferSelect;
export type IdentifierRow = typeof patientIdentifiers.$inferSelect;

const byId = prepared((orm) =>
  orm
    .select()
    .from(patients)
    .where(eq(patients.id, sql.placeholder("id")))
    .prepare(),
);

const identifiers = prepared((orm) =>
  orm
    .select()
    .from(patientIdentifiers)
    .where(eq(patientIdentifiers.patientId, sql.placeholder("patientId")))
    .orderBy(asc(patientIdentifiers.place))
    .prepare(),
);

const byNumber = prepared((orm) =>
  orm
    .select()
    .from(patientIdentifiers)
    .where(
      and(
        eq(patientIdentifiers.issuer, sql.placeholder("issuer")),
        eq(patientIdentifiers.value, sql.placeholder("value")),
      ),
    )
    .prepare(),
);

/** Somebody whom a search found; `wholeWords` where each word typed is one of theirs, not only a part of one. */
export type FoundRow = Pick<PatientRow, "id" | "familyName" | "givenName" | "birthOn" | "joinedInto"> & {
  readonly number: string | null;
  readonly wholeWords: boolean;
};

const has = (part: string): SQL => sql`instr(${patients.search}, ${part}) > 0`;

const isMeant = ({ words, births }: Sought): SQL | undefined =>
  and(...words.map(has), births.length === 0 ? undefined : inArray(patients.birthOn, [...births]));

const all = (conditions: readonly SQL[]): SQL<boolean> =>
  sql<boolean>`(${and(...conditions)})`.mapWith(Boolean);

export const patientById = (db: Database, id: string): PatientRow | undefined => byId(db).get({ id });

export const identifiersOf = (db: Database, patientId: string): readonly IdentifierRow[] =>
  identifiers(db).all({ patientId });

export const identifierByNumber = (db: Database, number: { issuer: string; value: string }) =>
  byNumber(db).get(number);

/**
 * Patients who are meant in one of these ways, first those who have every word of the first way whole, then those of whom a word
 * begins so, each by name. Registrations that were undone are left out. Not prepared: how many words are typed differs.
 */
export function findPatients(db: Database, sought: readonly Sought[], limit: number): readonly FoundRow[] {
  const words = sought[0]?.words ?? [];
  if (words.length === 0) return [];
  const wholeWords = all(words.map((word) => has(` ${word} `)));
  const beginnings = all(words.map((word) => has(` ${word}`)));
  return (
    db.orm
      .select({
        id: patients.id,
        familyName: patients.familyName,
        givenName: patients.givenName,
        birthOn: patients.birthOn,
        joinedInto: patients.joinedInto,
        number: patientIdentifiers.value,
        wholeWords,
      })
      .from(patients)
      .leftJoin(
        patientIdentifiers,
        and(eq(patientIdentifiers.patientId, patients.id), eq(patientIdentifiers.place, 1)),
      )
      .where(and(isNull(patients.withdrawnAt), or(...sought.map(isMeant))))
      // The plus keeps the planner from reading every row in the order of names, for the few that are found.
      .orderBy(desc(wholeWords), desc(beginnings), asc(sql`+${patients.familyName}`), asc(patients.givenName))
      .limit(limit)
      .all()
  );
}

const services = prepared((orm) =>
  orm
    .selectDistinct({ service: serviceOf })
    .from(patients)
    .where(isNotNull(serviceOf))
    .orderBy(asc(serviceOf))
    .prepare(),
);

/** Every service that some patient's contact names as the responsible one, as it is spelled there. */
export const servicesNamed = (db: Database): readonly string[] =>
  services(db)
    .all()
    .map(({ service }) => service ?? "");

export const addPatient = inserter(patients);
export const addIdentifier = inserter(patientIdentifiers);
export const addPatientChange = inserter(patientChanges);

export function updatePatient(tx: Tx, row: PatientRow): void {
  const { id, ...rest } = row;
  tx.orm.update(patients).set(rest).where(eq(patients.id, id)).run();
}

export function replaceIdentifiers(tx: Tx, patientId: string, rows: readonly IdentifierRow[]): void {
  tx.orm.delete(patientIdentifiers).where(eq(patientIdentifiers.patientId, patientId)).run();
  for (const row of rows) addIdentifier(tx, row);
}

const everyone = prepared((orm) =>
  orm
    .select({
      id: patients.id,
      familyName: patients.familyName,
      givenName: patients.givenName,
      birthOn: patients.birthOn,
      withdrawnAt: patients.withdrawnAt,
      joinedInto: patients.joinedInto,
    })
    .from(patients)
    .prepare(),
);

/** Who has a record, whatever became of it. */
export const everyPatient = (db: Database) => everyone(db).all();

const everyNumber = prepared((orm) =>
  orm
    .select({ patientId: patientIdentifiers.patientId, value: patientIdentifiers.value })
    .from(patientIdentifiers)
    .prepare(),
);

/** Every number with whose it is, whoever issued it. */
export const everyIdentifier = (db: Database) => everyNumber(db).all();

const openedIn = prepared((orm) =>
  orm
    .select({ patient: patients })
    .from(patientChanges)
    .innerJoin(patients, eq(patients.id, patientChanges.patientId))
    .where(
      and(
        eq(patientChanges.actId, sql.placeholder("actId")),
        // Nothing stood before: stored as JSON's null.
        sql`coalesce(json_type(${patientChanges.before}), 'null') = 'null'`,
        isNull(patients.withdrawnAt),
      ),
    )
    .prepare(),
);

/** The records that one act opened and that have not been withdrawn. */
export const patientsOpenedIn = (tx: Tx, actId: string): readonly PatientRow[] =>
  openedIn(tx)
    .all({ actId })
    .map(({ patient }) => patient);
