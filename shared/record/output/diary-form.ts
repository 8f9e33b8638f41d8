import { dayAt } from "#shared/day/instant.ts";
import { printDay, printMoment } from "#shared/day/print-day.ts";
import { parsed, type Refusal } from "#shared/errors/refusal.ts";
import { type Flush, type Leak, leaks } from "#shared/output/reading.ts";
import { hourTwice } from "#shared/record/field/hour-twice.ts";
import { lastYearsDay } from "#shared/record/field/last-years-day.ts";
import { asWords, matchWord } from "#shared/record/field/match-word.ts";
import { flushField } from "#shared/record/field/volume-field.ts";
import {
  type FieldReading,
  type FieldSpec,
  type FieldSpecs,
  namesOf,
  readField,
  readFields,
  readWhatCan,
  type Texts,
} from "#shared/record/field-spec.ts";
import type { FormContext, FormResult } from "#shared/record/form.ts";
import {
  cellName,
  cellOf,
  DIARY_ROWS,
  type DiaryCell,
  type DiaryRow,
  diaryRows,
  EACH,
  isUsed,
  namesOfRow,
  PASTED,
  rowIn,
} from "#shared/record/output/diary-cells.ts";
import { readDiaryWhen } from "#shared/record/output/diary-when.ts";
import type { Stretch } from "#shared/record/output/reading-beside.ts";
import { type ReadingEntry, readingForm, SINCE_LAST } from "#shared/record/output/reading-form.ts";

/** What is said once for all rows, as a reading by itself says it; the flush comes first, what most diaries do without last. */
export const diaryFields = (context: FormContext) => {
  const { reportedBy, leak, airLeak, swing, symptoms, from, measuredBy, basis } = readingForm.fields(context);
  return {
    [EACH]: flushField({
      label: "Flush given each time, mL",
      hint: "10, 3 x 10, none; blank: not recorded. A row may say otherwise",
    }),
    reportedBy,
    airLeak,
    swing,
    symptoms,
    leak: { ...leak, detail: true },
    measuredBy,
    basis,
    from: { ...from, label: "First row since" },
  };
};

type Shared = ReturnType<typeof diaryFields>;
type Read<F> = F extends FieldSpec<infer T> ? T : never;
export type SharedValues = { readonly [Name in keyof Shared]: Read<Shared[Name]> };

/** What a row is read beside: what the row before speaks of, and the flush and the leak that are said for all. */
type RowBeside = { readonly before: Stretch | null; readonly flushEach: Flush; readonly leakEach: Leak };

/** A cell is typed and no list, so that nothing that is pasted is lost. */
const leakWords = asWords(leaks);

/** "Sat 14 Nov 2026, 08:00", or of a whole day "Sat 14 Nov 2026, 00:00 to 24:00". */
const printStretch = ({ from, to }: Stretch, { zone }: FormContext): string =>
  from === SINCE_LAST ? printMoment(to, zone) : `${printDay(dayAt(from, zone))}, 00:00 to 24:00`;

/** The fields of one row, to be read after the row before it. */
function rowFields(context: FormContext, { before, flushEach, leakEach }: RowBeside) {
  const { drained, characters, flushGiven, otherIn } = readingForm.fields(context);
  const own = flushField({ label: "flush given, mL" });
  const when: FieldSpec<Stretch> = {
    label: "emptied at",
    read: (text) => readDiaryWhen(text, { ...context, before }),
    echo: (stretch) => printStretch(stretch, context),
    doubt: ({ from, to }, text) =>
      lastYearsDay(text, context) ?? (from === SINCE_LAST ? hourTwice(to, context.zone) : null),
  };
  const flush: FieldSpec<Flush> = {
    ...own,
    read: (text) => (text.trim() === "" ? parsed(flushEach) : own.read(text)),
    echo: (value) => flushGiven.echo?.(value) ?? "",
  };
  return {
    when,
    drained: { ...drained, label: "drained, mL" },
    flush,
    characters: { ...characters, label: "character" },
    leak: {
      label: "leak",
      read: (text: string) => (text.trim() === "" ? parsed(leakEach) : matchWord(text, leakWords)),
      echo: (value: Leak) => value,
    },
    otherIn: { ...otherIn, label: "other fluid in" },
  };
}

type RowFields = ReturnType<typeof rowFields>;
type RowValues = { readonly [Name in keyof RowFields]: Read<RowFields[Name]> };

/** A row as it can be read beside those before it. */
export type DiaryRowFields = {
  readonly row: number;
  readonly fields: FieldSpecs<RowValues>;
  readonly texts: DiaryRow;
};

/** What stands beside each cell of a row. */
export const besideCells = ({
  fields,
  texts,
}: DiaryRowFields): Readonly<Record<DiaryCell, FieldReading>> => ({
  when: readField(fields.when, texts.when),
  drained: readField(fields.drained, texts.drained),
  flush: readField(fields.flush, texts.flush),
  characters: readField(fields.characters, texts.characters),
  leak: readField(fields.leak, texts.leak),
  otherIn: readField(fields.otherIn, texts.otherIn),
});

/** Every row up to the last that is asked for, each with the fields that read it: a time without a day rests on the row before. */
export function rowsOfDiary(
  texts: Texts,
  context: FormContext,
  last = DIARY_ROWS,
): readonly DiaryRowFields[] {
  const { [EACH]: flushEach = "not recorded", leak: leakEach = "not recorded" } = readWhatCan<SharedValues>(
    diaryFields(context),
    texts,
  );
  let before: Stretch | null = null;
  return diaryRows.slice(0, last).map((row) => {
    const own = rowIn(texts, row);
    const fields: FieldSpecs<RowValues> = rowFields(context, { before, flushEach, leakEach });
    const when = fields.when.read(own.when);
    if (when.ok) before = when.value;
    return { row, fields, texts: own };
  });
}

const inRow =
  (row: number) =>
  (refusal: Refusal): Refusal => {
    const { field = "when" } = refusal;
    return { ...refusal, field: cellName(cellOf(field), row) };
  };

/** A row with what is said for all, as the values of a reading by itself. */
const asReading = (row: RowValues, { [EACH]: _each, from, ...shared }: SharedValues, isFirst: boolean) => ({
  ...shared,
  drained: row.drained,
  flushGiven: row.flush,
  to: row.when.to,
  from: isFirst && row.when.from === SINCE_LAST ? from : row.when.from,
  characters: row.characters,
  leak: row.leak,
  otherIn: row.otherIn,
  flushWithdrawn: "none" as const,
  procedureAspirate: false,
});

/**
 * The emptyings of a diary, each a reading of its own, or every cell to mend: all are logged or none. A row in which nothing
 * stands is no reading.
 */
export function readDiary(texts: Texts, context: FormContext): FormResult<readonly ReadingEntry[]> {
  const shared = readFields<SharedValues>(diaryFields(context), texts);
  const used = rowsOfDiary(texts, context).filter(({ row }) => isUsed(texts, row));
  const refusals: Refusal[] = shared.ok ? [] : [...shared.refusals];
  if ((texts[PASTED] ?? "").trim() !== "") refusals.push({ code: "pasted-not-in-rows", field: PASTED });
  const entries: ReadingEntry[] = [];
  for (const [index, { row, fields, texts: own }] of used.entries()) {
    const read = readFields(fields, own);
    if (!read.ok) refusals.push(...read.refusals.map(inRow(row)));
    if (!read.ok || !shared.ok) continue;
    const values = asReading(read.values, shared.values, index === 0);
    refusals.push(...(readingForm.check?.(values, context) ?? []).map(inRow(row)));
    entries.push(readingForm.entry(values, context));
  }
  if (used.length === 0 && refusals.length === 0)
    refusals.push({ code: "nothing-said", field: cellName("when", 1) });
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, entry: entries };
}

/** Every name that a diary sends, with what stands there when it opens. */
export const diaryOpening = (context: FormContext): Texts => {
  const shared = diaryFields(context);
  const cellsOfAll = diaryRows.flatMap(namesOfRow).map((name) => [name, ""]);
  return {
    [EACH]: "",
    ...Object.fromEntries(cellsOfAll),
    [PASTED]: "",
    ...Object.fromEntries(namesOf(shared).map((name) => [name, shared[name].initial ?? ""])),
  };
};
