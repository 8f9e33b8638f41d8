import type { ReactNode } from "react";
import type { OutputPage } from "#app/tubes/tube-page.ts";
import {
  besideSentence,
  onlyTheNumber,
  reasonSentence,
  rowSentence,
  verdictSentence,
} from "#shared/words/criterion.ts";
import styles from "./output.module.css";

type CriterionProps = { readonly output: Pick<OutputPage, "criterion" | "zone"> };

/** The verdict by the clinic's row with its first reason, never without what it means. */
export function CriterionVerdict({ output: { criterion, zone } }: CriterionProps): ReactNode {
  return (
    <p>
      <strong>{verdictSentence(criterion, zone)}</strong> {onlyTheNumber}
    </p>
  );
}

/** Every further reason, what stands beside the verdict, and the row. */
export function CriterionReasons({ output: { criterion, zone } }: CriterionProps): ReactNode {
  const further = [
    ...criterion.because.slice(1).map((reason) => reasonSentence(reason, zone)),
    ...criterion.beside.map(besideSentence),
  ];
  return (
    <>
      {further.length > 0 && (
        <ul className={styles.reasons} aria-label="Further reasons">
          {further.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {criterion.row !== null && <p className={styles.caution}>{rowSentence(criterion.row)}</p>}
    </>
  );
}
