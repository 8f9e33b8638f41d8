import { asc } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { patients } from "#db/schema/patients.ts";
import type { Database } from "#db/sqlite.ts";

const everyId = prepared((orm) =>
  orm
    .select({ id: patients.id })
    .from(patients)
    .orderBy(asc(patients.familyName), asc(patients.givenName), asc(patients.id))
    .prepare(),
);

/** Everybody who is registered, by name. */
export const patientIds = (db: Database): readonly string[] =>
  everyId(db)
    .all()
    .map(({ id }) => id);
