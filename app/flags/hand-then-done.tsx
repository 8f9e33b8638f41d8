"use client";

import { type ReactNode, useState } from "react";
import { FlagForm } from "#app/flags/flag-form.tsx";
import styles from "#app/flags/flags.module.css";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { FlagContext } from "#shared/record/call/flag-context.ts";

type HandThenDoneProps = {
  readonly patientId: string;
  readonly flagId: string;
  readonly context: FlagContext;
  readonly lastSeen: number;
  readonly drafts: { readonly handed: StoredDraft | null; readonly done: StoredDraft | null };
  /** How often it was handed over; 0: nobody has it. */
  readonly handed: number;
  readonly isDone: boolean;
  /** Another person takes it. */
  readonly again: boolean;
};

/**
 * It is handed over first; once somebody has it, what was done closes it. What was saved stays on the page with its undo, though the page
 * round it is asked for anew.
 */
export function HandThenDone({ drafts, handed, isDone, again, ...form }: HandThenDoneProps): ReactNode {
  const [opened] = useState({ handed, isDone, hands: handed === 0 || again });
  const isHanded = opened.hands ? handed > opened.handed : handed > 0;
  if (opened.isDone) return null;
  return (
    <>
      {opened.hands && (
        <section className={styles.next}>
          <h2>Who has it now?</h2>
          <FlagForm act="handed" draft={drafts.handed} {...form} />
        </section>
      )}
      {isHanded && (
        <section className={styles.next}>
          <h2>What was done?</h2>
          <FlagForm act="done" draft={drafts.done} {...form} />
        </section>
      )}
    </>
  );
}
