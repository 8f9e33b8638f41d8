import { readWhatCan, type Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { cellName, cellOf, isUsed } from "#shared/record/output/diary-cells.ts";
import {
  type DiaryRowFields,
  diaryFields,
  rowsOfDiary,
  type SharedValues,
} from "#shared/record/output/diary-form.ts";
import {
  type ReadingDoubt,
  readingDoubts,
  type TypedReading,
  typedRate,
} from "#shared/record/output/reading-doubts.ts";
import { SINCE_LAST } from "#shared/record/output/reading-form.ts";

/** What can be read of a row so far, as of a reading by itself. */
function typedIn({ fields, texts }: DiaryRowFields, { basis, from }: Partial<SharedValues>): TypedReading {
  const { when, drained, flush } = readWhatCan(fields, texts);
  const start = when?.from === SINCE_LAST ? from : when?.from;
  return {
    ...(when !== undefined && { to: when.to }),
    ...(start !== undefined && { from: start }),
    ...(drained !== undefined && { drained }),
    ...(flush !== undefined && { flushGiven: flush }),
    ...(basis !== undefined && { basis }),
  };
}

/** What is asked, by the name of the cell. */
export type DiaryDoubts = Readonly<Partial<Record<string, readonly ReadingDoubt[]>>>;

/** What is asked of each cell: each row beside what is logged already, and beside the other rows. */
export function diaryDoubts(texts: Texts, context: FormContext): DiaryDoubts {
  const { output } = context;
  if (output === undefined) return {};
  const shared = readWhatCan<SharedValues>(diaryFields(context), texts);
  const used = rowsOfDiary(texts, context).filter(({ row }) => isUsed(texts, row));
  const rows = used.map((each, index) => ({
    row: each.row,
    typed: typedIn(each, index === 0 ? shared : { ...shared, from: SINCE_LAST }),
  }));
  const asked: Record<string, readonly ReadingDoubt[]> = {};
  for (const { row, typed } of rows) {
    const others = rows.filter((other) => other.row !== row).map((other) => other.typed);
    const stretches = others.flatMap(({ to, from = SINCE_LAST }) =>
      to === undefined ? [] : [{ from, to, aspirate: false }],
    );
    const beside = { ...output, emptied: [...output.emptied, ...stretches] };
    const rates = others.flatMap((other) => typedRate(other, beside) ?? []);
    for (const doubt of readingDoubts(typed, { ...context, output: beside }, rates)) {
      const name = cellName(cellOf(doubt.field), row);
      asked[name] = [...(asked[name] ?? []), doubt];
    }
  }
  return asked;
}
