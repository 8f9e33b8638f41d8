"use client";

import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import styles from "#app/protocol/protocol.module.css";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

type DropRowProps = {
  readonly address: string;
  readonly isList: boolean;
  readonly revision: number;
  /** Told the revision of the draft without the row. */
  readonly dropped: (revision: number) => void;
};

/** Takes the row out of the draft: out of its list, or "no row". */
export function DropRow({ address, isList, revision, dropped }: DropRowProps): ReactNode {
  const [actId] = useState(newActId);
  const [phase, setPhase] = useState<"opening" | "offered" | "sending">("opening");
  const [problem, setProblem] = useState<string | null>(null);

  // Until the script listens, a press would be lost.
  useEffect(() => setPhase("offered"), []);

  const press = async (): Promise<void> => {
    setPhase("sending");
    const sent = await sendAct(() => api.protocol.dropRow.mutate({ actId, revision, address }));
    if (sent.kind === "saved") return dropped(sent.result.revision);
    setPhase("offered");
    setProblem(unsavedSentence(sent, "No answer came from the server. Press again: it is done only once."));
  };

  return (
    <div className={styles.acts}>
      <button type="button" disabled={phase !== "offered"} onClick={() => void press()}>
        {isList ? "Drop the row from the draft" : "Empty it to no row"}
      </button>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </div>
  );
}
