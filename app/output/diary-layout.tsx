import { type ClipboardEvent, type ReactNode, useEffect, useEffectEvent, useState } from "react";
import { DiaryRowCells } from "#app/output/diary-row-cells.tsx";
import { Field, fieldId } from "#app/ui/field.tsx";
import { RecordingFields } from "#app/ui/recording/recording-fields.tsx";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { LaidOut } from "#app/ui/recording-form.tsx";
import { netVolume } from "#shared/output/net-volume.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { readDiaryBlock } from "#shared/record/output/diary-block.ts";
import {
  cellName,
  cellOfName,
  DIARY_ROWS,
  diaryRows,
  EACH,
  isUsed,
  PASTED,
  rowOfCell,
  saysRare,
} from "#shared/record/output/diary-cells.ts";
import { diaryDoubts } from "#shared/record/output/diary-doubts.ts";
import { asPasted, type FillAt, fillDiary, firstFreeRow } from "#shared/record/output/diary-fill.ts";
import { diaryFields, diaryOpening, readDiary, rowsOfDiary } from "#shared/record/output/diary-form.ts";
import { diarySentence } from "#shared/words/output.ts";
import { diaryDoubtsByCell } from "#shared/words/reading-doubts.ts";
import styles from "./diary.module.css";

type DiaryLayoutProps = LaidOut & {
  readonly context: FormContext;
  readonly draft: StoredDraft | null;
  readonly flushOrdered: boolean;
};

/** Rows that stand open from the beginning; one more opens below the last that is used. */
const OPEN_ROWS = 6;

const inputOf = (name: string): HTMLInputElement | HTMLTextAreaElement | null => {
  const control = document.getElementById(fieldId(name));
  return control instanceof HTMLInputElement || control instanceof HTMLTextAreaElement ? control : null;
};

/** Texts that are put into fields once those stand on the page. */
function usePut(typed: (field: string) => void): (texts: Texts) => void {
  const [waiting, setWaiting] = useState<Texts>({});
  const put = useEffectEvent((texts: Texts) => {
    for (const [name, text] of Object.entries(texts)) {
      const input = inputOf(name);
      if (input === null) continue;
      input.value = text;
      typed(name);
    }
  });
  useEffect(() => put(waiting), [waiting]);
  return setWaiting;
}

/** Whether the cells that most diaries do without were asked for; the focus goes to the row for which they were. */
function useRare(): { readonly opened: boolean; readonly open: (forRow: number | null) => void } {
  const [asked, setAsked] = useState<{ readonly forRow: number | null } | null>(null);
  useEffect(() => {
    if (asked !== null && asked.forRow !== null) inputOf(cellName("leak", asked.forRow))?.focus();
  }, [asked]);
  return { opened: asked !== null, open: (forRow) => setAsked({ forRow }) };
}

/** What is said for all once, and below it the rows; a block that is pasted into a row fills it and those after it. */
export function DiaryLayout(props: DiaryLayoutProps): ReactNode {
  const { context, draft, texts, problems, typed } = props;
  const [opening] = useState<Texts>(() => ({ ...diaryOpening(context), ...draft?.texts }));
  const [filledTo, setFilledTo] = useState(0);
  const [told, setTold] = useState<readonly string[]>([]);
  const put = usePut(typed);
  const rare = useRare();
  const last = Math.max(0, filledTo, ...diaryRows.filter((row) => isUsed(texts, row)));
  const withRare = rare.opened || diaryRows.some((row) => saysRare(texts, row));
  const shown = Math.min(DIARY_ROWS, Math.max(OPEN_ROWS, last + 1));
  const asked = diaryDoubtsByCell(diaryDoubts(texts, context), context.zone);
  const { [EACH]: each, ...rest } = diaryFields(context);
  const plan = { draft };

  const fill = (pasted: string, at: FillAt): void => {
    const { rows, leftOut } = readDiaryBlock(pasted);
    const { texts: filled, over } = fillDiary(texts, rows, at);
    setFilledTo(Math.min(DIARY_ROWS, at.row + rows.length - 1));
    setTold(leftOut);
    if (diaryRows.some((row) => saysRare(filled, row))) rare.open(null);
    put({ ...filled, [PASTED]: over.map(asPasted).join("\n") });
  };
  const pastedInto = (event: ClipboardEvent<HTMLElement>): void => {
    const pasted = event.clipboardData.getData("text");
    const name = event.target instanceof HTMLInputElement ? event.target.name : "";
    const [row, cell] = [rowOfCell(name), cellOfName(name)];
    if (row === undefined || cell === undefined || !/[\t\n]/.test(pasted.trim())) return;
    event.preventDefault();
    fill(pasted, { row, cell });
  };
  return (
    <div className={styles.diary}>
      <RecordingFields plan={{ ...plan, fields: { [EACH]: each } }} {...{ texts, problems, typed }} />
      <div className={styles.rows} data-rare={withRare || undefined} onPaste={pastedInto}>
        <Heads withRare={withRare} />
        {rowsOfDiary(texts, context, shown).map((row) => (
          <DiaryRowCells key={row.row} {...{ row, withRare, asked, opening, problems, typed }} />
        ))}
      </div>
      {!withRare && (
        <button className={styles.rare} type="button" onClick={() => rare.open(Math.max(1, last))}>
          Leak or other fluid, row by row
        </button>
      )}
      <DiaryNet {...props} />
      <Paste
        problem={problems.find(({ field }) => field === PASTED)?.sentence}
        opening={opening[PASTED] ?? ""}
        isUsed={(texts[PASTED] ?? "") !== ""}
        typed={() => typed(PASTED)}
        putIn={(pasted) => fill(pasted, { row: firstFreeRow(texts), cell: "drained" })}
      />
      <p className={styles.told} role="status">
        {told.length > 0 && `Left out, for no figure stands there: ${told.join("; ")}`}
      </p>
      <RecordingFields plan={{ ...plan, fields: rest }} {...{ texts, problems, typed }} />
    </div>
  );
}

function Heads({ withRare }: { readonly withRare: boolean }): ReactNode {
  return (
    <div className={styles.heads} aria-hidden="true">
      <span />
      <span>Emptied at</span>
      <span>Drained, mL</span>
      <span>Flush given, mL</span>
      <span>Character</span>
      {withRare && (
        <>
          <span>Leak: none, damp, soaking</span>
          <span>Other fluid: contrast 20</span>
        </>
      )}
    </div>
  );
}

/** How many rows can be logged as they stand, and what they bring together. */
function DiaryNet({ texts, context, flushOrdered }: DiaryLayoutProps): ReactNode {
  const read = readDiary(texts, context);
  if (!read.ok) return <output className={styles.net} />;
  const nets = read.entry.map((entry) => netVolume(entry, flushOrdered));
  return <output className={styles.net}>{diarySentence(nets)}</output>;
}

type PasteProps = {
  readonly problem: string | undefined;
  readonly opening: string;
  readonly isUsed: boolean;
  readonly typed: () => void;
  readonly putIn: (pasted: string) => void;
};

/** A place for a block from elsewhere; what has no room in the rows stays in it. */
function Paste({ problem, opening, isUsed: used, typed, putIn }: PasteProps): ReactNode {
  const [opened, setOpened] = useState(used);
  if (used && !opened) setOpened(true);
  return (
    <details className={styles.paste} open={opened || undefined}>
      <summary>Paste what was written down</summary>
      <Field
        name={PASTED}
        label="Pasted"
        hint="a line each: time, drained, flush, character; or a column of figures, one a day"
        problem={problem}
        long
        control={{ rows: 6, defaultValue: opening, onInput: typed }}
      />
      <button type="button" onClick={() => putIn(inputOf(PASTED)?.value ?? "")}>
        Put it into the rows
      </button>
    </details>
  );
}
