import type { ReactNode } from "react";
import { coversWords } from "#shared/words/call-list.ts";
import type { CallsPage } from "./call-columns.tsx";
import styles from "./calls.module.css";

/** On a day on which the clinic is closed: why, and who covers the trials that run. */
export function ClosedToday({ closed }: Pick<CallsPage, "closed">): ReactNode {
  if (closed === null) return null;
  return (
    <p className={styles.said}>
      <strong>The clinic is closed today: {closed.because}.</strong> {coversWords(closed.trials)}
    </p>
  );
}
