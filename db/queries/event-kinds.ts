import { eventKinds } from "#db/schema/events.ts";
import type { Tx } from "#db/transaction.ts";

/** Adds the kinds that this code knows and the database lacks. None is taken away: old events point to them. */
export function ensureEventKinds(tx: Tx, kinds: readonly string[]): void {
  const rows = kinds.map((kind) => ({ kind }));
  if (rows.length > 0) tx.orm.insert(eventKinds).values(rows).onConflictDoNothing().run();
}
