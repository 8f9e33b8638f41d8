"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useState } from "react";
import type { api } from "#app/_trpc/client.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import styles from "#app/protocol/protocol.module.css";
import { DataTable } from "#app/ui/data-table.tsx";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { Field } from "#app/ui/field.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { type FileBody, fileIn, sendFile } from "#app/ui/send-file.ts";

type Brought = Awaited<ReturnType<typeof api.protocol.bringFile.mutate>>;
type FileProblem = Extract<Brought, { readonly ok: false }>["problems"][number];

const NOTHING: Problem = {
  field: "file",
  sentence: "Choose a file, or paste its lines with their headings.",
};

/** What is to mend of the whole file stands beside the field that it came from; what is of a line, in a table of lines. */
const ofWholeFile = (problems: readonly FileProblem[], field: string): readonly Problem[] =>
  problems.filter(({ line }) => line === null).map(({ sentence }) => ({ field, sentence }));

const send = (body: FileBody, revision: number) =>
  sendFile<Brought>(body, {
    url: "/api/protocol",
    headers: { "x-act-id": newActId(), "x-revision": String(revision) },
    unanswered: "No answer came from the server. Look at the draft: the file may be in it already.",
  });

/** Choose a file or paste it: the draft has its rows, or everything that is to mend is told and nothing is taken. */
export function FileForm({ revision }: { readonly revision: number }): ReactNode {
  const router = useRouter();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [lines, setLines] = useState<readonly FileProblem[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [isReading, setReading] = useState(false);
  const [isIn, setIn] = useState(false);
  const runs = useScriptRuns();

  const told = (whole: readonly Problem[], ofLines: readonly FileProblem[]): void => {
    setProblems(whole);
    setLines(ofLines);
    setAttempt((count) => count + 1);
  };

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const body = fileIn(new FormData(event.currentTarget));
    if (body === null) return told([NOTHING], []);
    setReading(true);
    const answer = await send(body, revision);
    setReading(false);
    router.refresh();
    if (!answer.ok) return told([answer.problem], []);
    if (answer.said.ok) return setIn(true);
    const found = answer.said.problems;
    const field = typeof body === "string" ? "pasted" : "file";
    const ofLines = found.filter(({ line }) => line !== null);
    const count = `${ofLines.length} ${ofLines.length === 1 ? "line is" : "lines are"} to mend, listed below. Nothing was taken.`;
    told(
      [...ofWholeFile(found, field), ...(ofLines.length > 0 ? [{ field, sentence: count }] : [])],
      ofLines,
    );
  };

  if (isIn)
    return (
      <NoticeLine>
        <span>The draft has the rows of the file. No date moves until an approver signs.</span>
        <a href="/protocol/draft">To the draft</a>
      </NoticeLine>
    );
  const problemOf = (name: string): string | undefined =>
    problems.find(({ field }) => field === name)?.sentence;
  return (
    <>
      <form className={styles.upload} method="post" onSubmit={(event) => void submit(event)} noValidate>
        <ErrorSummary problems={problems} attempt={attempt} />
        <Field
          name="file"
          label="File"
          hint="CSV, as a spreadsheet saves it; commas, semicolons or tabs"
          problem={problemOf("file")}
          control={{ type: "file", accept: ".csv,.txt,.tsv,text/csv,text/plain" }}
        />
        <Field
          name="pasted"
          label="Or paste its lines"
          hint="the line of headings with them"
          long
          problem={problemOf("pasted")}
          control={{ rows: 6 }}
        />
        <div className={styles.acts}>
          <button type="submit" disabled={!runs || isReading}>
            {isReading ? "Reading the file" : "Bring it into the draft"}
          </button>
          <span>All of its rows or none.</span>
        </div>
      </form>
      {lines.length > 0 && <LinesToMend lines={lines} />}
    </>
  );
}

const LinesToMend = ({ lines }: { readonly lines: readonly FileProblem[] }): ReactNode => (
  <DataTable
    caption="Lines to mend"
    columns={[
      { head: "Line", cell: ({ line }) => line },
      { head: "Row", cell: ({ row }) => row },
      { head: "What to mend", cell: ({ sentence }) => sentence },
    ]}
    rows={lines}
    keyOf={({ line, row, sentence }) => `${line} ${row} ${sentence}`}
    none="No line is to mend."
  />
);
