"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

type UndoBatchProps = { readonly undoes: string; readonly tubes: number };

/** Takes back everything that a list brought in, as one act; asks once, since it may be many. */
export function UndoBatch({ undoes, tubes }: UndoBatchProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [state, setState] = useState<"offered" | "asked" | "undoing">("offered");
  const [problem, setProblem] = useState<string | null>(null);

  const undo = async (): Promise<void> => {
    setState("undoing");
    const sent = await sendAct(() => api.record.undone.mutate({ actId, undoes }));
    if (sent.kind === "saved") return router.refresh();
    setState("offered");
    setProblem(
      unsavedSentence(sent, "No answer came from the server. Take it back again: it is done only once."),
    );
  };

  if (state === "offered")
    return (
      <>
        <button type="button" onClick={() => setState("asked")}>
          Undo
        </button>
        {problem !== null && <strong> {problem}</strong>}
      </>
    );
  return (
    <>
      Take back {tubes} {tubes === 1 ? "tube" : "tubes"}?{" "}
      <button type="button" disabled={state === "undoing"} onClick={() => void undo()}>
        {state === "undoing" ? "Taking back" : "Yes, take back"}
      </button>{" "}
      <button type="button" disabled={state === "undoing"} onClick={() => setState("offered")}>
        No
      </button>
    </>
  );
}
