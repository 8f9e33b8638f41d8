"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { ShelfDone } from "#app/shelf/shelf-done.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import styles from "./shelf.module.css";

type ShelveProps = {
  readonly typeId: string;
  readonly lastUpdatedAt: number;
  /** On the shelf now, so that it can be taken off. */
  readonly inUse: boolean;
};

/** Takes a type off the shelf, or puts it back. */
export function Shelve({ typeId, lastUpdatedAt, inUse }: ShelveProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [begun] = useState(inUse);
  const [phase, setPhase] = useState<"opening" | "offered" | "sending" | "done">("opening");
  const [problem, setProblem] = useState<string | null>(null);

  // Until the script listens, a press would be lost.
  useEffect(() => setPhase("offered"), []);

  const press = async (): Promise<void> => {
    setPhase("sending");
    const act = begun ? api.shelf.takenOff : api.shelf.putBack;
    const sent = await sendAct(() => act.mutate({ actId, typeId, lastUpdatedAt }));
    if (sent.kind === "saved") setPhase("done");
    else {
      setPhase("offered");
      setProblem(unsavedSentence(sent, "No answer came from the server. Press again: it is done only once."));
    }
    router.refresh();
  };

  if (phase === "done")
    return <ShelfDone said={begun ? "It is off the shelf." : "It is on the shelf again."} actId={actId} />;
  return (
    <div className={styles.acts}>
      <button
        type="button"
        disabled={phase === "opening" || phase === "sending"}
        onClick={() => void press()}
      >
        {begun ? "Take it off the shelf" : "Put it back on the shelf"}
      </button>
      <span>
        {begun
          ? "It is offered no more. What was recorded with it keeps its facts, and it can be put back."
          : "It was taken off: it is not offered."}
      </span>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </div>
  );
}
