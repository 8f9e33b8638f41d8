import { dropSheetRow } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";

/** Takes a list away that waits. What was brought in from it stays. */
export function dropSheet(db: Database, sheetId: string): void {
  inTransaction(db, (tx) => dropSheetRow(tx, sheetId));
}
