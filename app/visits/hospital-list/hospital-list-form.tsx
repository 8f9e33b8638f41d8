"use client";

import { type FormEvent, type ReactNode, useState } from "react";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { fileIn } from "#app/ui/send-file.ts";
import { SheetFields } from "#app/ui/sheet-fields.tsx";
import { BringBookings } from "#app/visits/hospital-list/bring-bookings.tsx";
import {
  type BookingAnswers,
  type HospitalPreview,
  previewList,
  type SentList,
} from "#app/visits/hospital-list/hospital-preview.ts";
import { ListAnswers } from "#app/visits/hospital-list/list-answers.tsx";
import { AskedTable, PreviewTables } from "#app/visits/hospital-list/preview-tables.tsx";
import styles from "./hospital-list.module.css";

const NOTHING: Problem = { field: "file", sentence: "Choose a file, or paste the rows with their headings." };

/** What was sent and how it stands; each reading is another, so that its act is too. */
type Read = { readonly list: SentList; readonly preview: HospitalPreview; readonly at: number };

type HospitalListFormProps = {
  readonly headings: readonly string[];
  /** As before anything is answered. */
  readonly unanswered: BookingAnswers;
};

/** Choose a file or paste rows; nothing is booked until what is shown is brought in. */
export function HospitalListForm({ headings, unanswered }: HospitalListFormProps): ReactNode {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [isReading, setReading] = useState(false);
  const [read, setRead] = useState<Read | null>(null);
  const runs = useScriptRuns();

  const readList = async (list: SentList): Promise<void> => {
    const at = attempt + 1;
    setAttempt(at);
    setReading(true);
    const answer = await previewList(list);
    setReading(false);
    setProblems(answer.ok ? [] : [answer.problem]);
    if (answer.ok) setRead({ list: { ...list, answers: answer.said.answers }, preview: answer.said, at });
  };

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const body = fileIn(typed);
    setRead(null);
    if (body === null) {
      setAttempt(attempt + 1);
      return setProblems([NOTHING]);
    }
    await readList({ body, encoding: String(typed.get("encoding") ?? ""), answers: unanswered });
  };

  const problemOf = (name: string): string | undefined =>
    problems.find(({ field }) => field === name)?.sentence;
  return (
    <>
      <p className={styles.headings}>
        Its headings say what stands below them: {headings.join(", ")}. A row needs a record number, or a
        family name and a birth date, and the day. The tube is the only one that is in, or the one that the
        row names; else it is asked.
      </p>
      <form className={styles.upload} method="post" onSubmit={(event) => void submit(event)} noValidate>
        <ErrorSummary problems={problems} attempt={attempt} />
        <SheetFields problemOf={problemOf} />
        <div className={styles.acts}>
          <button type="submit" disabled={!runs || isReading}>
            {isReading ? "Reading the list" : "Read the list"}
          </button>
          <span>Nothing is booked yet: what was read is shown below first.</span>
        </div>
      </form>
      {read !== null && <Shown key={read.at} {...read} isReading={isReading} readAgain={readList} />}
    </>
  );
}

type ShownProps = Read & {
  readonly isReading: boolean;
  readonly readAgain: (list: SentList) => Promise<void>;
};

function Shown({ list, preview, isReading, readAgain }: ShownProps): ReactNode {
  const [answers, setAnswers] = useState(list.answers);
  const isChanged = JSON.stringify(answers) !== JSON.stringify(list.answers);
  const choose = (row: number, choice: string): void => {
    const { [String(row)]: _was, ...others } = answers.choices;
    setAnswers({ ...answers, choices: choice === "" ? others : { ...others, [row]: choice } });
  };
  return (
    <section aria-label="What was read" className={styles.read}>
      <p className={styles.sum} role="status">
        {preview.count} {preview.count === 1 ? "row" : "rows"} read.
      </p>
      <ListAnswers preview={preview} answers={answers} change={setAnswers} />
      <AskedTable preview={preview} choices={answers.choices} choose={choose} />
      {isChanged && (
        <div className={styles.acts}>
          <button type="button" disabled={isReading} onClick={() => void readAgain({ ...list, answers })}>
            {isReading ? "Reading the list" : "Read it again with these answers"}
          </button>
          <span>What stands below is as it was read before.</span>
        </div>
      )}
      {!isChanged && preview.problems.length === 0 && <BringBookings list={list} preview={preview} />}
      {preview.problems.length === 0 && <PreviewTables preview={preview} />}
    </section>
  );
}
