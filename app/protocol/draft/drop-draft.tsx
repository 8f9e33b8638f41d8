"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import styles from "#app/protocol/protocol.module.css";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

/** Drops the whole draft, asked twice: nothing brings it back. What stands is untouched. */
export function DropDraft({ revision }: { readonly revision: number }): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [phase, setPhase] = useState<"opening" | "offered" | "asked" | "sending">("opening");
  const [problem, setProblem] = useState<string | null>(null);

  // Until the script listens, a press would be lost.
  useEffect(() => setPhase("offered"), []);

  const drop = async (): Promise<void> => {
    setPhase("sending");
    const sent = await sendAct(() => api.protocol.dropDraft.mutate({ actId, revision }));
    if (sent.kind !== "saved") {
      setPhase("offered");
      setProblem(unsavedSentence(sent, "No answer came from the server. Press again: it is done only once."));
    }
    router.refresh();
  };

  if (phase === "opening" || phase === "offered")
    return (
      <div className={styles.acts} data-screen-only>
        <button type="button" disabled={phase === "opening"} onClick={() => setPhase("asked")}>
          Drop the draft
        </button>
        {problem !== null && <strong role="alert">{problem}</strong>}
      </div>
    );
  return (
    <div className={styles.acts} data-screen-only>
      <span role="status">
        Every change of this draft goes, and nothing brings it back. What stands is untouched.
      </span>
      <button type="button" disabled={phase === "sending"} onClick={() => void drop()}>
        Drop all of it
      </button>
      <button type="button" disabled={phase === "sending"} onClick={() => setPhase("offered")}>
        Keep it
      </button>
    </div>
  );
}
