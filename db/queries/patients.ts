import { and, asc, eq, isNull, like, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { patientChanges, patientIdentifiers, patients } from "#db/schema/patients.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

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

const found = prepared((orm) =>
  orm
    .select({
      id: patients.id,
      familyName: patients.familyName,
      givenName: patients.givenName,
      birthOn: patients.birthOn,
      number: patientIdentifiers.value,
      issuer: patientIdentifiers.issuer,
    })
    .from(patients)
    .innerJoin(
      patientIdentifiers,
      and(eq(patientIdentifiers.patientId, patients.id), eq(patientIdentifiers.place, 1)),
    )
    .where(like(patients.search, sql.placeholder("pattern")))
    .orderBy(asc(patients.familyName), asc(patients.givenName), asc(patients.id))
    .limit(sql.placeholder("limit"))
    .prepare(),
);

export const patientById = (db: Database, id: string): PatientRow | undefined => byId(db).get({ id });

export const identifiersOf = (db: Database, patientId: string): readonly IdentifierRow[] =>
  identifiers(db).all({ patientId });

export const identifierByNumber = (db: Database, number: { issuer: string; value: string }) =>
  byNumber(db).get(number);

/** Patients whose search text holds what was typed; `%` and `_` typed by a person are dropped, since no name or number has them. */
export const findPatients = (db: Database, typed: string, limit: number) =>
  found(db).all({ pattern: `%${typed.replace(/[%_]/g, "")}%`, limit });

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
