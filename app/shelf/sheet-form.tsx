"use client";

import { type FormEvent, type ReactNode, useState } from "react";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { BringSheet } from "#app/shelf/bring-sheet.tsx";
import { PreviewTables } from "#app/shelf/preview-tables.tsx";
import { previewSheet, type SentSheet } from "#app/shelf/send-sheet.ts";
import type { ShelfPreview } from "#app/shelf/shelf-preview.ts";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { fileIn } from "#app/ui/send-file.ts";
import { SheetFields } from "#app/ui/sheet-fields.tsx";
import styles from "./shelf.module.css";

/** What was sent and how it stands; each reading is another, so that its act is too. */
type Read = { readonly sheet: SentSheet; readonly preview: ShelfPreview; readonly at: number };

function sheetIn(form: HTMLFormElement): SentSheet | null {
  const typed = new FormData(form);
  const body = fileIn(typed);
  if (body === null) return null;
  return { body, encoding: String(typed.get("encoding") ?? "") };
}

const NOTHING: Problem = { field: "file", sentence: "Choose a file, or paste the rows with their headings." };

type SheetFormProps = { readonly headings: readonly string[] };

/** Choose a file or paste rows; nothing is written until what is shown is brought in. */
export function SheetForm({ headings }: SheetFormProps): ReactNode {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [isReading, setReading] = useState(false);
  const [read, setRead] = useState<Read | null>(null);
  const runs = useScriptRuns();

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const sheet = sheetIn(event.currentTarget);
    const at = attempt + 1;
    setAttempt(at);
    setRead(null);
    if (sheet === null) return setProblems([NOTHING]);
    setReading(true);
    const answer = await previewSheet(sheet);
    setReading(false);
    setProblems(answer.ok ? [] : [answer.problem]);
    if (answer.ok) setRead({ sheet, preview: answer.said, at });
  };

  const problemOf = (name: string): string | undefined =>
    problems.find(({ field }) => field === name)?.sentence;
  return (
    <>
      <p className={styles.headings}>
        Its headings say what stands below them: {headings.join(", ")}. Only Name and Sort have to be there. A
        blank cell says nothing of a type; ? says that nobody knows.
      </p>
      <form className={styles.upload} method="post" onSubmit={(event) => void submit(event)} noValidate>
        <ErrorSummary problems={problems} attempt={attempt} />
        <SheetFields problemOf={problemOf} />
        <div className={styles.acts}>
          <button type="submit" disabled={!runs || isReading}>
            {isReading ? "Reading the sheet" : "Read the sheet"}
          </button>
          <span>Nothing is on the shelf yet: what was read is shown below first.</span>
        </div>
      </form>
      {read !== null && <Shown key={read.at} {...read} />}
    </>
  );
}

function Shown({ sheet, preview }: Read): ReactNode {
  const { leftOut, rows } = preview;
  return (
    <section aria-label="What was read">
      <p className={styles.sum} role="status">
        {rows.length} {rows.length === 1 ? "row" : "rows"} read.
        {leftOut.length > 0 && ` Nothing is read from: ${leftOut.join(", ")}.`}
      </p>
      <BringSheet sheet={sheet} preview={preview} />
      <PreviewTables preview={preview} />
    </section>
  );
}
