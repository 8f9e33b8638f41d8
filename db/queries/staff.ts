import { asc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type StaffRow = typeof staff.$inferSelect;

const byUserName = prepared((orm) =>
  orm
    .select()
    .from(staff)
    .where(eq(staff.userName, sql.placeholder("userName")))
    .prepare(),
);

const everyone = prepared((orm) =>
  orm.select().from(staff).orderBy(asc(staff.fullName), asc(staff.id)).prepare(),
);

/** User names are kept in lower case. */
export const staffByUserName = (db: Database, userName: string): StaffRow | undefined =>
  byUserName(db).get({ userName });

/** Closed accounts included: events point to them. */
export const allStaff = (db: Database): readonly StaffRow[] => everyone(db).all();

export const addStaffRow = inserter(staff);

/** The account stays: events point to it. Nobody signs in to it any more. */
export function closeStaffRow(tx: Tx, id: string, at: Instant): void {
  tx.orm.update(staff).set({ closedAt: at }).where(eq(staff.id, id)).run();
}

export function setPasswordHash(tx: Tx, id: string, passwordHash: string): void {
  tx.orm.update(staff).set({ passwordHash }).where(eq(staff.id, id)).run();
}
