"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useState } from "react";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { SheetFields } from "#app/ui/sheet-fields.tsx";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./import.module.css";

/** Sends a file or what was pasted, and says where the list then stands, or what is wrong with it. */
async function send(body: File | string, encoding: string): Promise<{ sheetId: string } | Problem> {
  const isFile = typeof body !== "string";
  const field = isFile ? "file" : "pasted";
  if (isFile && body.size > SHEET_LIMIT_KIB * 1024)
    return {
      field,
      sentence: refusalSentence({ code: "file-too-large", args: { limit: `${SHEET_LIMIT_KIB / 1024} MB` } }),
    };
  const headers = {
    "x-file-name": encodeURIComponent(isFile ? body.name : ""),
    "x-encoding": isFile ? encoding : "utf-8",
  };
  try {
    const answer = await fetch("/api/sheet", { method: "POST", headers, body });
    const said = (await answer.json()) as { sheetId: string } | { sentence: string };
    return "sheetId" in said ? said : { field, sentence: said.sentence };
  } catch {
    return { field, sentence: "No answer came from the server. Send the list again: nothing was recorded." };
  }
}

/** Choose a file or paste rows; nothing is recorded by it. */
export function Upload(): ReactNode {
  const router = useRouter();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [isSending, setSending] = useState(false);
  const runs = useScriptRuns();

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const file = typed.get("file");
    const pasted = String(typed.get("pasted") ?? "");
    const body = file instanceof File && file.size > 0 ? file : pasted;
    setAttempt((count) => count + 1);
    if (typeof body === "string" && body.trim() === "")
      return setProblems([
        { field: "file", sentence: "Choose a file, or paste the rows with their headings." },
      ]);
    setSending(true);
    const said = await send(body, String(typed.get("encoding") ?? ""));
    setSending(false);
    if ("sheetId" in said) router.push(`/import/${said.sheetId}`);
    else setProblems([said]);
  };

  const problemOf = (name: string): string | undefined =>
    problems.find(({ field }) => field === name)?.sentence;
  return (
    <form className={styles.upload} method="post" onSubmit={(event) => void submit(event)} noValidate>
      <ErrorSummary problems={problems} attempt={attempt} />
      <SheetFields problemOf={problemOf} />
      <div className={styles.acts}>
        <button type="submit" disabled={!runs || isSending}>
          {isSending ? "Reading the list" : "Read the list"}
        </button>
        <span>Nothing is recorded yet: the next page shows how every row will stand.</span>
      </div>
    </form>
  );
}
