import { and, eq, gt, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { callHolds } from "#db/schema/call-holds.ts";
import { staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type CallHoldRow = typeof callHolds.$inferSelect;

const fresh = prepared((orm) =>
  orm
    .select({ staffId: callHolds.staffId, name: staff.fullName, sinceAt: callHolds.sinceAt })
    .from(callHolds)
    .innerJoin(staff, eq(staff.id, callHolds.staffId))
    .where(
      and(
        eq(callHolds.patientId, sql.placeholder("patientId")),
        gt(callHolds.sinceAt, sql.placeholder("after")),
      ),
    )
    .prepare(),
);

/** Who rings a patient, where they took it after a moment of the machine's clock. */
export const holdAfter = (db: Database, of: { readonly patientId: string; readonly after: Instant }) =>
  fresh(db).get(of);

/** In place of whoever held it. */
export function putHold(tx: Tx, row: CallHoldRow): void {
  tx.orm
    .insert(callHolds)
    .values(row)
    .onConflictDoUpdate({
      target: callHolds.patientId,
      set: { staffId: row.staffId, sinceAt: row.sinceAt },
    })
    .run();
}

/** Somebody else's stays. */
export function dropHold(tx: Tx, { patientId, staffId }: Pick<CallHoldRow, "patientId" | "staffId">): void {
  tx.orm
    .delete(callHolds)
    .where(and(eq(callHolds.patientId, patientId), eq(callHolds.staffId, staffId)))
    .run();
}
