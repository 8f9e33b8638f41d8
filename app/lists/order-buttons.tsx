"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { useScriptRuns } from "#app/import/use-script-runs.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import type { OwnPlace, WorkList } from "#shared/step/work-list.ts";
import styles from "./work-list.module.css";

type Move = "first" | "up" | "down" | "back";

type OrderButtonsProps = {
  readonly list: WorkList;
  readonly stepId: string;
  /** Whose line it is, so that each button says what it moves. */
  readonly of: string;
  /** Where the line stands in the person's own order, counted from 0; null where it does not. */
  readonly at: number | null;
  /** The lines before and behind it in that order, as the page shows it. */
  readonly above: string | undefined;
  readonly below: string | undefined;
};

/** The line that was moved last, and how: where it comes to stand, the keyboard goes on from there. */
let moved: { readonly stepId: string; readonly move: Move } | null = null;

const words: Readonly<Record<Move, string>> = { first: "First", up: "Up", down: "Down", back: "Back" };

const NO_ANSWER = "No answer came from the server. Press again: it is put there only once.";

/** Puts a line of the list first, or moves it in the order that this person keeps. */
export function OrderButtons({ list, stepId, of, at, above, below }: OrderButtonsProps): ReactNode {
  const router = useRouter();
  const runs = useScriptRuns();
  const group = useRef<HTMLSpanElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const places: Readonly<Record<Move, OwnPlace | null>> = {
    first: at === 0 ? null : { at: "first" },
    up: above === undefined ? null : { at: "before", of: above },
    down: below === undefined ? null : { at: "behind", of: below },
    back: at === null ? null : { at: "its own" },
  };

  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus follows the line when its place changes, not with every drawing.
  useEffect(() => {
    if (!runs || moved?.stepId !== stepId) return;
    const button = (move: string) => group.current?.querySelector<HTMLButtonElement>(`button${move}`);
    (button(`[value=${moved.move}]`) ?? button(""))?.focus();
    moved = null;
  }, [at, runs]);

  const press = async (move: Move, place: OwnPlace): Promise<void> => {
    setProblem(null);
    const sent = await sendAct(() => api.list.linePut.mutate({ list, stepId, place }));
    if (sent.kind !== "saved") return setProblem(unsavedSentence(sent, NO_ANSWER));
    moved = { stepId, move };
    router.refresh();
  };

  return (
    <span ref={group} className={styles.order}>
      {(["first", "up", "down", "back"] as const).map((move) => {
        const place = places[move];
        return place === null ? null : (
          <button
            key={move}
            type="button"
            value={move}
            disabled={!runs}
            aria-label={`${words[move]}: ${of}`}
            onClick={() => void press(move, place)}
          >
            {words[move]}
          </button>
        );
      })}
      {problem !== null && <strong role="alert">{problem}</strong>}
    </span>
  );
}
