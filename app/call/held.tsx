"use client";

import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** Null where it is taken; else why not, and who has it. */
async function take(patientId: string, over: boolean): Promise<string | null> {
  const sent = await sendAct(() => api.calls.taken.mutate({ patientId, over }));
  return sent.kind === "refused" ? sent.refusals.map(refusalSentence).join(" ") : null;
}

/**
 * Takes the call while its page is open, so that nobody else rings this patient meanwhile, and lets go of it with the page. Where somebody
 * else has it, says who and since when; a second press takes it over.
 */
export function Held({ patientId }: { readonly patientId: string }): ReactNode {
  const [refused, setRefused] = useState<string | null>(null);
  useEffect(() => {
    void take(patientId, false).then(setRefused);
    return () => void api.calls.released.mutate({ patientId }).catch(() => undefined);
  }, [patientId]);
  if (refused === null) return null;
  return (
    <p role="status">
      {refused}{" "}
      <button type="button" onClick={() => void take(patientId, true).then(setRefused)}>
        Take the call over
      </button>
    </p>
  );
}
