"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

export type ConfirmDatesProps = {
  readonly patientId: string;
  readonly tubeId: string;
  readonly lastSeen: number;
};

/** The one press that lets the proposed dates stand. */
export function ConfirmDates({ patientId, tubeId, lastSeen }: ConfirmDatesProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const [state, setState] = useState<"asked" | "sending" | "confirmed">("asked");
  const [problem, setProblem] = useState<string | null>(null);

  const press = async (): Promise<void> => {
    setState("sending");
    const sent = await sendAct(() =>
      api.record.datesConfirmed.mutate({ actId, patientId, tubeId, lastSeen }),
    );
    if (sent.kind === "saved") {
      setState("confirmed");
      return router.refresh();
    }
    setState("asked");
    setProblem(unsavedSentence(sent, "No answer came from the server. Confirm again: it is done only once."));
  };

  return (
    <NoticeLine>
      {state === "confirmed" ? (
        <span>The new dates stand.</span>
      ) : (
        <button type="button" disabled={state === "sending"} onClick={() => void press()}>
          Let the new dates stand
        </button>
      )}
      <a href={`/tubes/${tubeId}`}>To the tube</a>
      {problem !== null && <strong>{problem}</strong>}
    </NoticeLine>
  );
}
