import { eq } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { clinic } from "#db/schema/clinic.ts";
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
