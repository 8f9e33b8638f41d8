"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { Field } from "#app/ui/field.tsx";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { StepList } from "#shared/step/work-list.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./work-list.module.css";

type SaveFilterProps = {
  readonly list: StepList;
  /** What is in force, as the address holds it. */
  readonly filter: FilterTexts;
  /** The same in words. */
  readonly words: string;
};

/** Keeps the filter in force under a name; whoever saved it finds it as a link. */
export function SaveFilter({ list, filter, words }: SaveFilterProps): ReactNode {
  const router = useRouter();
  const runs = useScriptRuns();
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const [isSending, setSending] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = event.currentTarget;
    const name = String(new FormData(form).get("name") ?? "");
    setSending(true);
    const sent = await sendAct(() => api.list.filterSaved.mutate({ list, name, filter }));
    setSending(false);
    if (sent.kind === "saved") {
      setProblem(undefined);
      return router.refresh();
    }
    setProblem(
      sent.kind === "refused"
        ? sent.refusals.map(refusalSentence).join(" ")
        : unsavedSentence(sent, "No answer came from the server. Save it again: it is kept once."),
    );
    form.querySelector("input")?.focus();
  };

  return (
    <details className={styles.saving} data-screen-only>
      <summary>Save this filter</summary>
      <form method="post" onSubmit={(event) => void submit(event)} noValidate>
        <Field
          name="name"
          label="Name"
          hint={`${words}: kept for you, as a link on this list`}
          problem={problem}
          control={{ autoComplete: "off", maxLength: 200 }}
        />
        <button type="submit" disabled={!runs || isSending}>
          Save the filter
        </button>
      </form>
    </details>
  );
}
