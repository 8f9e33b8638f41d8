import { eq, lte, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { sessions, staff } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type SessionRow = typeof sessions.$inferSelect;

const byHash = prepared((orm) =>
  orm
    .select({ session: sessions, person: staff })
    .from(sessions)
    .innerJoin(staff, eq(staff.id, sessions.staffId))
    .where(eq(sessions.tokenHash, sql.placeholder("tokenHash")))
    .prepare(),
);

const touch = prepared((orm) =>
  orm
    .update(sessions)
    .set({ lastSeenAt: sql`${sql.placeholder("at")}` })
    .where(eq(sessions.tokenHash, sql.placeholder("tokenHash")))
    .prepare(),
);

export const sessionByHash = (db: Database, tokenHash: string) => byHash(db).get({ tokenHash });

export const addSession = inserter(sessions);

export function touchSession(tx: Tx, tokenHash: string, at: Instant): void {
  touch(tx).run({ tokenHash, at });
}

export function dropSession(tx: Tx, tokenHash: string): void {
  tx.orm.delete(sessions).where(eq(sessions.tokenHash, tokenHash)).run();
}

export function dropSessionsEndedBy(tx: Tx, at: Instant): void {
  tx.orm.delete(sessions).where(lte(sessions.endsAt, at)).run();
}

/** Every session of one account, when it closes. */
export function dropSessionsOf(tx: Tx, staffId: string): void {
  tx.orm.delete(sessions).where(eq(sessions.staffId, staffId)).run();
}
