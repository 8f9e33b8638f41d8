import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { answerSheet } from "#server/sheet/answer-sheet.ts";
import { type BroughtIn, bringIn } from "#server/sheet/bring-in.ts";
import { keepSheet } from "#server/sheet/keep-sheet.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import type { Answers } from "#shared/sheet/answers.ts";
import { people } from "#tests/support/database.ts";

const staff = people.nurse;

/** Keeps a list as the nurse would bring it, and answers it. */
export function kept(db: Database, list: string | Uint8Array, answers: Partial<Answers> = {}): string {
  const bytes = typeof list === "string" ? Buffer.from(list) : list;
  const brought = { fileName: "list.csv", bytes, encoding: null };
  const { sheetId } = keepSheet({ db, staff }, brought);
  const suggested = loadSheet(db, sheetId).answers;
  answerSheet({ db, staff }, { sheetId, answers: { ...suggested, ...answers } });
  return sheetId;
}

/** The same, brought in. */
export const broughtIn = async (
  db: Database,
  list: string | Uint8Array,
  answers: Partial<Answers> = {},
): Promise<BroughtIn> => bringIn({ db, staff }, { actId: newId(), sheetId: kept(db, list, answers) });
