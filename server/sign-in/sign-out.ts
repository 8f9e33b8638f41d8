import { dropSession } from "#db/queries/sessions.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { tokenHashOf } from "#server/sign-in/token.ts";

/** Ends the session of a cookie's token; nothing happens when it has ended already. */
export const signOut = (db: Database, token: string): void =>
  inTransaction(db, (tx) => dropSession(tx, tokenHashOf(token)));
