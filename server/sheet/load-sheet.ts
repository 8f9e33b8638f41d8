import { sheetById } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import { type Answers, answersSchema, columnRefusals } from "#shared/sheet/answers.ts";
import { asksOrder, findOrder, type OrderFound, orderOf } from "#shared/sheet/date-order.ts";
import { nameIsUnclear } from "#shared/sheet/name-cell.ts";
import { isNoTube } from "#shared/sheet/no-tube.ts";
import type { Reading } from "#shared/sheet/row-texts.ts";
import { type Sheet, sheetSchema } from "#shared/sheet/sheet.ts";

export type KeptSheet = {
  readonly id: string;
  readonly fileName: string;
  readonly sheet: Sheet;
  readonly answers: Answers;
};

/** A sheet that waits. Refuses one that is gone (`sheet-gone`). */
export function loadSheet(db: Database, sheetId: string): KeptSheet {
  const row = sheetById(db, sheetId);
  if (row === undefined) throw new DomainError({ code: "sheet-gone" });
  return {
    id: row.id,
    fileName: row.fileName,
    sheet: sheetSchema.parse(row.cells),
    answers: answersSchema.parse(row.answers),
  };
}

/** How the sheet is read, or what has to be answered first. */
export type SheetReading = {
  readonly reading: Reading;
  readonly order: OrderFound;
  /** The first row with a name that has no comma; null where every name can be taken apart. */
  readonly unclearName: number | null;
  readonly refusals: readonly Refusal[];
};

function unclearName({ rows }: Sheet, { columns }: Answers): number | null {
  const place = columns.indexOf("wholeName");
  return rows.find(({ cells }) => place >= 0 && nameIsUnclear((cells[place] ?? "").trim()))?.row ?? null;
}

function orderRefusals(order: OrderFound, { dateOrder }: Answers): readonly Refusal[] {
  if (!asksOrder(order, dateOrder)) return [];
  const shown = order.unclear ?? order.proofs["month first"];
  return [{ code: "date-order-asked", args: { row: shown?.row ?? 0, text: shown?.text ?? "" } }];
}

/** What its answers make of a sheet. `thisYear` tells one century of two-digit years from another. */
export function readingOf(
  { sheet, answers }: Omit<KeptSheet, "id" | "fileName">,
  thisYear: number,
): SheetReading {
  const tubes = { ...sheet, rows: sheet.rows.filter((line) => !isNoTube(line, answers)) };
  const order = findOrder(tubes, answers);
  const row = unclearName(tubes, answers);
  const nameAsked: readonly Refusal[] =
    row === null || answers.nameOrder !== null ? [] : [{ code: "name-order-asked", args: { row } }];
  return {
    reading: {
      headings: sheet.headings,
      answers,
      dateOrder: orderOf(order, answers.dateOrder),
      thisYear,
    },
    order,
    unclearName: row,
    refusals: [...columnRefusals(answers), ...orderRefusals(order, answers), ...nameAsked],
  };
}
