"use client";

import { type ReactNode, useState } from "react";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";

type UndoNoticeProps = {
  /** What was entered, in words. */
  readonly said: string;
  /** Amends the act away. Must carry one act id, so that pressing twice undoes once. */
  readonly undo: () => Promise<unknown>;
  /** What is said once it is undone; of an entry, that it stays in the story. */
  readonly after?: string;
  /** Where to go on: links. */
  readonly children?: ReactNode;
};

const IN_STORY = "It stays in the story as undone.";

/** Says what was saved and offers to take it back at once. */
export function UndoNotice({ said, undo, after = IN_STORY, children }: UndoNoticeProps): ReactNode {
  const [state, setState] = useState<"offered" | "undoing" | "undone">("offered");
  const [problem, setProblem] = useState<string | null>(null);

  const press = async (): Promise<void> => {
    setState("undoing");
    const sent = await sendAct(undo);
    if (sent.kind === "saved") return setState("undone");
    setState("offered");
    setProblem(unsavedSentence(sent, "No answer came from the server. Undo again: it is done only once."));
  };

  if (state === "undone")
    return (
      <NoticeLine>
        Undone: {said} {after} {children}
      </NoticeLine>
    );
  return (
    <NoticeLine>
      <span>{said}</span>
      <button type="button" disabled={state === "undoing"} onClick={() => void press()}>
        Undo
      </button>
      {children}
      {problem !== null && <strong>{problem}</strong>}
    </NoticeLine>
  );
}
