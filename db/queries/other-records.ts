import { and, asc, eq, isNotNull, isNull, ne, or, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import type { Database } from "#db/sqlite.ts";

const named = {
  id: patients.id,
  familyName: patients.familyName,
  givenName: patients.givenName,
  birthOn: patients.birthOn,
};

/** Another record that stands by itself. */
const another = and(
  ne(patients.id, sql.placeholder("patientId")),
  isNull(patients.joinedInto),
  isNull(patients.withdrawnAt),
);

const byName = [asc(patients.familyName), asc(patients.givenName), asc(patients.id)];

const withNumber = prepared((orm) =>
  orm
    .selectDistinct(named)
    .from(patients)
    .innerJoin(patientIdentifiers, eq(patientIdentifiers.patientId, patients.id))
    .where(and(another, eq(patientIdentifiers.value, sql.placeholder("number"))))
    .orderBy(...byName)
    .prepare(),
);

const self = sql`(select family_name, given_name, birth_on from patients where id = ${sql.placeholder("patientId")})`;

const alike = prepared((orm) =>
  orm
    .select(named)
    .from(patients)
    .innerJoin(sql`${self} as self`, sql`true`)
    .where(
      and(
        another,
        or(
          and(isNotNull(patients.birthOn), sql`${patients.birthOn} = self.birth_on`),
          sql`lower(${patients.familyName}) = lower(self.family_name) and lower(${patients.givenName}) = lower(self.given_name)`,
        ),
      ),
    )
    .orderBy(...byName)
    .limit(sql.placeholder("limit"))
    .prepare(),
);

/** Other records by a whole record number, whoever issued it. */
export const recordsWithNumber = (db: Database, patientId: string, number: string) =>
  withNumber(db).all({ patientId, number });

/** Other records with the same birth date, or the same names. */
export const recordsAlike = (db: Database, patientId: string, limit: number) =>
  alike(db).all({ patientId, limit });
