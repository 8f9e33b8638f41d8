import { answerSheetRow } from "#db/queries/sheets.ts";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import type { Doing } from "#server/record/record-event.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Answers } from "#shared/sheet/answers.ts";

export type AnsweringSheet = { readonly sheetId: string; readonly answers: Answers };

/** Keeps what was answered of a list that waits. Refuses answers for other columns than it has (`columns-changed`). */
export function answerSheet({ db }: Doing, { sheetId, answers }: AnsweringSheet): void {
  const { sheet } = loadSheet(db, sheetId);
  if (answers.columns.length !== sheet.headings.length) throw new DomainError({ code: "columns-changed" });
  inTransaction(db, (tx) => answerSheetRow(tx, { id: sheetId, answers, touchedAt: machineNow() }));
}
