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

type CriterionVerdictProps = {
  readonly output: Pick<OutputPage, "criterion" | "zone">;
  /** `short`: the verdict with its first reason; `whole`: every reason, what stands beside it, and the row. */
  readonly told: "short" | "whole";
};

/** The verdict by the clinic's row, never without what it means. */
export function CriterionVerdict({ output: { criterion, zone }, told }: CriterionVerdictProps): ReactNode {
  const further = [
    ...criterion.because.slice(1).map((reason) => reasonSentence(reason, zone)),
    ...criterion.beside.map(besideSentence),
  ];
  return (
    <>
      <p>
        <strong>{verdictSentence(criterion, zone)}</strong> {onlyTheNumber}
      </p>
      {told === "whole" && further.length > 0 && (
        <ul className={styles.reasons}>
          {further.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {told === "whole" && criterion.row !== null && (
        <p className={styles.caution}>{rowSentence(criterion.row)}</p>
      )}
    </>
  );
}
