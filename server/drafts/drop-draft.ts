import { type DraftKey, dropDraftRow } from "#db/queries/drafts.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";

/** The form was saved, or what was typed is not wanted. */
export const dropDraft = (db: Database, key: DraftKey): void =>
  inTransaction(db, (tx) => dropDraftRow(tx, key));
