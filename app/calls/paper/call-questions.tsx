import type { ReactNode } from "react";
import { fullNameOf, identityOf } from "#app/patients/identity-of.ts";
import { answerBoxes, openedLines } from "#shared/words/call-paper.ts";
import styles from "./call-paper.module.css";
import type { OnPaper } from "./call-paper.tsx";

/** What is asked, of whom or of which tube, with boxes for the answer and what an answer opens. */
export function CallQuestions({ of }: { readonly of: OnPaper }): ReactNode {
  if (of.questions.length === 0)
    return <p>The clinic's table has no row of questions that speaks of these tubes.</p>;
  return (
    <table className={styles.table}>
      <caption>What is asked</caption>
      <thead>
        {/* Heads stand on each sheet: the second one says whose it is too. */}
        <tr data-paper-only>
          <th colSpan={answerBoxes.length + 1} className={styles.strong}>
            <bdi>{fullNameOf(of.patient)}</bdi>
            {identityOf(of.patient, null).identifiers.map(({ word, value }) => (
              <span key={word}>
                {", "}
                {word} <bdi>{value}</bdi>
              </span>
            ))}
          </th>
        </tr>
        <tr>
          <th scope="col">Question, and what an answer opens</th>
          {answerBoxes.map((answer) => (
            <th key={answer} scope="col" className={styles.answer}>
              {answer}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {of.questions.map((question) => (
          <tr key={`${question.tube} ${question.asks}`}>
            <th scope="row">
              {question.tube !== null && <bdi className={styles.strong}>{question.tube}: </bdi>}
              <bdi>{question.asks}</bdi>
              {openedLines(question).map((line) => (
                <bdi key={line} className={styles.flag}>
                  {line}
                </bdi>
              ))}
            </th>
            {answerBoxes.map((answer) => (
              <td key={answer} className={styles.answer} data-head={answer}>
                <span className={styles.box} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
