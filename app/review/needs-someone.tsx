import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { Now } from "#app/ui/now.tsx";
import { isUrgent } from "#shared/step/step.ts";
import { stepNames } from "#shared/words/steps.ts";
import { whyInShort } from "#shared/words/why-in-short.ts";
import styles from "./review.module.css";

/** What needs somebody now stands before every question: an alarm, a tube that is out. Its acts stand with the open steps below. */
export function NeedsSomeone({ steps }: Pick<TubePage, "steps">): ReactNode {
  const urgent = steps.filter(({ kind }) => isUrgent(kind));
  return urgent.map(({ id, kind, why }) => (
    <p key={id} className={styles.now}>
      <Now>{stepNames[kind]}.</Now> {whyInShort(why)}
    </p>
  ));
}
