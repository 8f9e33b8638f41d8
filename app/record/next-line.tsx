import type { ReactNode } from "react";
import type { Day } from "#shared/day/day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { stepNames, stepStanding } from "#shared/words/steps.ts";
import styles from "./next-line.module.css";

type NextLineProps = { readonly steps: readonly OpenStep[]; readonly today: Day };

/** What comes next as the record stands. Asked anew once something is saved, so that the new date is seen at once. */
export function NextLine({ steps, today }: NextLineProps): ReactNode {
  const [next] = steps;
  return (
    <p className={styles.next} role="status">
      {next === undefined
        ? "This record has ended: nothing is open."
        : `Next: ${stepNames[next.kind]}, ${stepStanding(next, today)}.`}
    </p>
  );
}
