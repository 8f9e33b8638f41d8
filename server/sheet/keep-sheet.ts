import { addSheet, commonIssuer, dropSheetsTouchedBy, rememberedColumns } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import type { Doing } from "#server/record/record-event.ts";
import { readSheet } from "#server/sheet/read-sheet.ts";
import { instant } from "#shared/day/instant.ts";
import { DRAFT_LIFE_MS } from "#shared/record/draft.ts";
import { type Answers, LEFT_OUT, type Remembered, suggestColumns } from "#shared/sheet/answers.ts";
import type { Encoding } from "#shared/sheet/encoding.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";
import { sheetFields } from "#shared/sheet/sheet-fields.ts";

export type Brought = {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** Null: found by its marks. */
  readonly encoding: Encoding | null;
};

const HERE = "this hospital";

function remembered(db: Database): Remembered {
  return new Map(
    rememberedColumns(db).map(({ heading, field }) => [
      heading,
      sheetFields.find((known) => known === field) ?? LEFT_OUT,
    ]),
  );
}

/** What can be answered of a sheet before anybody has: its columns by their headings, and who issues the numbers here. */
export const suggestAnswers = (db: Database, sheet: Sheet): Answers => ({
  columns: suggestColumns(sheet, remembered(db)),
  dateOrder: null,
  nameOrder: null,
  issuer: commonIssuer(db) ?? HERE,
});

/** Reads a list and keeps it until it is brought in, for 7 days at most. Nothing of it is in the record yet. */
export function keepSheet({ db, staff }: Doing, { fileName, bytes, encoding }: Brought): { sheetId: string } {
  const cells = readSheet(bytes, encoding);
  const touchedAt = machineNow();
  const sheetId = newId();
  inTransaction(db, (tx) => {
    dropSheetsTouchedBy(tx, instant(touchedAt - DRAFT_LIFE_MS));
    addSheet(tx, {
      id: sheetId,
      staffId: staff.id,
      fileName,
      cells,
      answers: suggestAnswers(db, cells),
      touchedAt,
    });
  });
  return { sheetId };
}
