import { eq, inArray, lt } from "drizzle-orm";
import { signInRefusals } from "#db/schema/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type SignInRefusal = typeof signInRefusals.$inferSelect;

export const signInRefusalsOf = (db: Database, keys: readonly string[]): readonly SignInRefusal[] =>
  db.orm
    .select()
    .from(signInRefusals)
    .where(inArray(signInRefusals.key, [...keys]))
    .all();

export function saveSignInRefusal(tx: Tx, row: SignInRefusal): void {
  tx.orm
    .insert(signInRefusals)
    .values(row)
    .onConflictDoUpdate({ target: signInRefusals.key, set: row })
    .run();
}

export function forgetSignInRefusal(tx: Tx, key: string): void {
  tx.orm.delete(signInRefusals).where(eq(signInRefusals.key, key)).run();
}

export function forgetSignInRefusalsBefore(tx: Tx, at: Instant): void {
  tx.orm.delete(signInRefusals).where(lt(signInRefusals.lastFailureAt, at)).run();
}
