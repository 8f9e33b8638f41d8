import type { Answers, DateOrder } from "#shared/sheet/answers.ts";
import { orderShown } from "#shared/sheet/date-cell.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";
import { dateFields } from "#shared/sheet/sheet-fields.ts";

/** A cell that shows something, with the row where it stands. */
export type Shown = { readonly row: number; readonly text: string };

/** What the dates of a sheet say of their own order. */
export type OrderFound = {
  /** The first cell that can only be read so. */
  readonly proofs: Readonly<Record<DateOrder, Shown | null>>;
  /** The first cell that can be read both ways, and how many there are. */
  readonly unclear: Shown | null;
  readonly unclearCount: number;
};

export const findOrder = (sheet: Sheet, { columns }: Pick<Answers, "columns">): OrderFound =>
  orderIn(
    sheet,
    columns.map((field) => dateFields.some((dateField) => dateField === field)),
  );

/** The same of any sheet; `isDated` says of each column whether dates stand in it. */
export function orderIn({ rows }: Pick<Sheet, "rows">, isDated: readonly boolean[]): OrderFound {
  const dated = isDated.flatMap((holdsDates, index) => (holdsDates ? [index] : []));
  const proofs: Record<DateOrder, Shown | null> = { "day first": null, "month first": null };
  let unclear: Shown | null = null;
  let unclearCount = 0;
  for (const { row, cells } of rows) {
    for (const index of dated) {
      const text = cells[index] ?? "";
      const shown = orderShown(text);
      if (shown === "unclear") {
        unclear ??= { row, text };
        unclearCount += 1;
      } else if (shown !== undefined) proofs[shown] ??= { row, text };
    }
  }
  return { proofs, unclear, unclearCount };
}

/** The order by which a sheet is read: the answer, else the only one that its own dates prove; null has to be asked. */
export function orderOf({ proofs }: OrderFound, answered: DateOrder | null): DateOrder | null {
  if (answered !== null) return answered;
  if (proofs["day first"] !== null && proofs["month first"] === null) return "day first";
  if (proofs["month first"] !== null && proofs["day first"] === null) return "month first";
  return null;
}

/** Whether a person has to say the order before the rows can be read. */
export const asksOrder = (found: OrderFound, answered: DateOrder | null): boolean =>
  orderOf(found, answered) === null &&
  (found.unclear !== null || (found.proofs["day first"] !== null && found.proofs["month first"] !== null));
