import { desc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { acts } from "#db/schema/acts.ts";
import { type ClinicSettings, clinic, clinicChanges } from "#db/schema/clinic.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

export type Clinic = typeof clinic.$inferSelect;

const only = prepared((orm) => orm.select().from(clinic).limit(1).prepare());

/** The clinic of this database; undefined until the first account is made. */
export const clinicIfAny = (db: Database): Clinic | undefined => only(db).get();

/** The clinic of this database. Throws when there is none: a database in use has one. */
export function clinicOf(db: Database): Clinic {
  const row = clinicIfAny(db);
  if (row === undefined) throw new Error("the database holds no clinic");
  return row;
}

export function addClinic(tx: Tx, row: Omit<Clinic, "id">): void {
  tx.orm
    .insert(clinic)
    .values({ ...row, id: 1 })
    .run();
}

/** Refused by the table itself for a clinic that is not a demo. */
export function setClockOffset(tx: Tx, clockOffsetMs: number): void {
  tx.orm.update(clinic).set({ clockOffsetMs }).where(eq(clinic.id, 1)).run();
}

export const addClinicChange = inserter(clinicChanges);

export function setClinicSettings(tx: Tx, settings: ClinicSettings): void {
  tx.orm.update(clinic).set(settings).where(eq(clinic.id, 1)).run();
}

const changes = prepared((orm) =>
  orm
    .select({
      id: clinicChanges.id,
      at: clinicChanges.at,
      who: staff.fullName,
      before: clinicChanges.before,
      after: clinicChanges.after,
    })
    .from(clinicChanges)
    .innerJoin(acts, eq(acts.id, clinicChanges.actId))
    .innerJoin(staff, eq(staff.id, acts.staffId))
    .orderBy(desc(clinicChanges.at), desc(clinicChanges.id))
    .limit(sql.placeholder("limit"))
    .prepare(),
);

/** What was changed of the clinic's settings, by whom, the newest first. */
export const clinicChangesNewest = (db: Database, limit: number) => changes(db).all({ limit });
