import { useEffect, useEffectEvent, useRef } from "react";
import type { Texts } from "#shared/record/field-spec.ts";

/** The act id goes along: an act whose answer was lost is not entered a second time from its draft. */
export type StoredDraft = { readonly actId: string; readonly texts: Texts };

/** Where a form keeps what is typed and not yet saved: on the server, never in the browser. */
export type DraftStore = {
  readonly save: (draft: StoredDraft) => Promise<unknown>;
  readonly drop: () => Promise<unknown>;
};

const PAUSE_MS = 1000;
const LONGEST_MS = 2500;

export type Draft = {
  /** Something was typed: it is stored after a short pause, and within 3 s in any case. */
  readonly changed: (texts: Texts) => void;
  /** Stores now what is not yet stored, before the page is left. */
  readonly keep: () => Promise<void>;
  /** The form was saved: forget the draft. */
  readonly drop: () => Promise<void>;
};

/** A draft that cannot be stored is no reason to disturb who is typing: the next change tries again. */
const quietly = (work: Promise<unknown>): Promise<void> =>
  work.then(
    () => undefined,
    () => undefined,
  );

export function useDraft(store: DraftStore, actId: string): Draft {
  const waiting = useRef<{ texts: Texts; since: number } | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const keep = async (): Promise<void> => {
    clearTimeout(timer.current);
    if (waiting.current === null) return;
    const { texts } = waiting.current;
    waiting.current = null;
    await quietly(store.save({ actId, texts }));
  };

  const changed = (texts: Texts): void => {
    const since = waiting.current?.since ?? performance.now();
    waiting.current = { texts, since };
    clearTimeout(timer.current);
    const left = Math.max(0, LONGEST_MS - (performance.now() - since));
    timer.current = setTimeout(() => void keep(), Math.min(PAUSE_MS, left));
  };

  const drop = async (): Promise<void> => {
    clearTimeout(timer.current);
    waiting.current = null;
    await quietly(store.drop());
  };

  const keepWhenHidden = useEffectEvent(() => {
    if (document.visibilityState === "hidden") void keep();
  });
  useEffect(() => {
    const listener = (): void => keepWhenHidden();
    document.addEventListener("visibilitychange", listener);
    return () => document.removeEventListener("visibilitychange", listener);
  }, []);

  return { changed, keep, drop };
}
