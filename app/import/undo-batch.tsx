"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import styles from "./import.module.css";

type UndoBatchProps = { readonly undoes: string; readonly what: string };

/** Takes back everything that a list brought in, as one act. */
export function UndoBatch({ undoes, what }: UndoBatchProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [isUndoing, setUndoing] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);

  const undo = async (): Promise<void> => {
    setUndoing(true);
    const sent = await sendAct(() => api.record.undone.mutate({ actId, undoes }));
    setUndoing(false);
    // Something may have been recorded since the page was opened: it is asked anew what rests on the list.
    router.refresh();
    if (sent.kind === "saved") return;
    setProblem(
      unsavedSentence(sent, "No answer came from the server. Take it back again: it is done only once."),
    );
  };

  return (
    <div className={styles.acts}>
      <button type="button" disabled={isUndoing} onClick={() => void undo()}>
        {isUndoing ? "Taking back" : `Take back ${what}`}
      </button>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </div>
  );
}
