"use client";

import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { RoomsDone } from "#app/rooms/rooms-done.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

type TakeAwayProps = {
  readonly roomId: string;
  /** The version of the rooms that the page showed. */
  readonly seen: number;
};

type Done = Awaited<ReturnType<typeof api.rooms.change.mutate>>;

/** The press that takes a room away, then what it did. */
export function TakeAway({ roomId, seen }: TakeAwayProps): ReactNode {
  const [actId] = useState(newActId);
  const [ready, setReady] = useState(false);
  const [done, setDone] = useState<Done | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  // Until the script listens, a press would be lost.
  useEffect(() => setReady(true), []);

  const press = async (): Promise<void> => {
    setReady(false);
    setProblem(null);
    const asked = { kind: "take away", roomId } as const;
    const sent = await sendAct(() => api.rooms.change.mutate({ actId, seen, asked }));
    if (sent.kind === "saved") return setDone(sent.result);
    setReady(true);
    setProblem(unsavedSentence(sent, "No answer came from the server. Press again: it is done only once."));
  };

  if (done !== null) return <RoomsDone done={done} />;
  return (
    <NoticeLine>
      <button type="button" disabled={!ready} onClick={() => void press()}>
        Take it away
      </button>
      <a href="/rooms">Leave it</a>
      {problem !== null && <strong role="alert">{problem}</strong>}
    </NoticeLine>
  );
}
