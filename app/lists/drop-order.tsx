"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import type { WorkList } from "#shared/step/work-list.ts";

/** The way back from a person's own order of a list. */
export function DropOrder({ list }: { readonly list: WorkList }): ReactNode {
  const router = useRouter();
  const runs = useScriptRuns();
  const [problem, setProblem] = useState<string | null>(null);
  const press = async (): Promise<void> => {
    const sent = await sendAct(() => api.list.ownOrderDropped.mutate({ list }));
    if (sent.kind === "saved") router.refresh();
    else setProblem(unsavedSentence(sent, "No answer came from the server. Press again."));
  };
  return (
    <>
      <button type="button" disabled={!runs} onClick={() => void press()}>
        Back to the list's own order
      </button>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </>
  );
}
