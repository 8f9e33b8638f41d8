import type { Database } from "#db/sqlite.ts";

declare const open: unique symbol;

/** A database inside a transaction. What writes the record asks for one, so that nothing is checked and then written apart. */
export type Tx = Database & { readonly [open]: "immediate" };

/**
 * One IMMEDIATE transaction: it waits for its turn to write before it reads, so that nothing changes between check and
 * write. `work` is synchronous; a promise is refused and nothing is written. Inside another transaction it is a part of that.
 */
export const inTransaction = <T>(db: Database, work: (tx: Tx) => T): T =>
  db.sqlite.transaction(() => work(db as Tx)).immediate();
