import { Fragment, type ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { fullNameOf, identityOf } from "#app/patients/identity-of.ts";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import type { Day } from "#shared/day/day.ts";
import {
  interpreterWords,
  marksOfCall,
  nextWords,
  reasonsOf,
  thereWords,
  triedWords,
} from "#shared/words/call-list.ts";
import { callPaperCautions, numberLines, outcomeBoxes } from "#shared/words/call-paper.ts";
import { capital } from "#shared/words/capital.ts";
import styles from "./call-paper.module.css";
import { CallQuestions } from "./call-questions.tsx";

export type CallPaperPage = Awaited<ReturnType<SignedIn["api"]["calls"]["paper"]>>;
export type OnPaper = CallPaperPage["patients"][number];

/** A number and a line to write on, for whoever rings three times. */
const tries = ["1", "2", "3"] as const;

export function CallPaper({ page }: { readonly page: CallPaperPage }): ReactNode {
  return page.patients.map((of) => <PatientOnPaper key={of.patient.id} {...{ of, page }} />);
}

type PatientOnPaperProps = { readonly of: OnPaper; readonly page: CallPaperPage };

function PatientOnPaper({ of, page }: PatientOnPaperProps): ReactNode {
  const { today, isExample, clinic } = page;
  return (
    <section className={styles.patient}>
      <h2 className={styles.who}>
        <bdi className={styles.name}>{fullNameOf(of.patient)}</bdi>
        {identityOf(of.patient, null).identifiers.map(({ word, value }) => (
          <span key={word}>
            <span className={styles.soft}>{word}</span> <bdi>{value}</bdi>
          </span>
        ))}
        {isExample && <ExampleMark />}
      </h2>
      <p>
        Ask for two of them before anything is said.{" "}
        {capital(interpreterWords(of) ?? "no interpreter needed")}.
      </p>
      <WhyOnPaper of={of} today={today} />
      <Numbers of={of} />
      <Tries />
      <CallQuestions of={of} />
      <ToWrite of={of} />
      <ul className={styles.cautions}>
        {callPaperCautions.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <ClinicNumber clinic={clinic} />
    </section>
  );
}

function WhyOnPaper({ of, today }: { readonly of: OnPaper; readonly today: Day }): ReactNode {
  const marks = marksOfCall(of, today);
  return (
    <>
      <p>
        <span className={styles.strong}>{[nextWords(of, today), ...marks].join(" · ")}</span>
        {of.inpatient !== null && `. In hospital: ${of.inpatient}`}. Tried:{" "}
        {triedWords(of.story, today) ?? "not yet"}.
      </p>
      <p>
        Tubes:{" "}
        {of.tubes.map(({ id, title, detail }, index) => (
          <Fragment key={id}>
            {index > 0 && "; "}
            <bdi className={styles.strong}>{title}</bdi>, {detail}
          </Fragment>
        ))}
        .
      </p>
      {reasonsOf(of.steps).map(({ tube, says }) => (
        <p key={`${tube} ${says}`}>
          {tube !== null && <bdi>{tube}: </bdi>}
          <bdi>{says}</bdi>
        </p>
      ))}
    </>
  );
}

function Numbers({ of }: { readonly of: OnPaper }): ReactNode {
  const lines = numberLines(of.contact);
  if (lines.length === 0) return <p className={styles.strong}>No number is recorded.</p>;
  const best = of.there === null ? "Best times" : `Best times: ${thereWords(of.there)}`;
  return (
    <table className={styles.table}>
      <caption>Numbers, in the order in which they are rung</caption>
      <thead>
        <tr>
          <th scope="col">Number</th>
          <th scope="col">Whose</th>
          <th scope="col">{best}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ number, whose, best: times }) => (
          <tr key={`${number} ${whose}`}>
            <th scope="row">
              <bdi className={styles.strong}>{number}</bdi>
            </th>
            <td>{whose}</td>
            <td>{times ?? "not recorded"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const Tries = (): ReactNode => (
  <table className={styles.table}>
    <caption>Tries: the true day and time of each, the number, and what came of it</caption>
    <tbody>
      {tries.map((number) => (
        <tr key={number}>
          <th scope="row">
            {number}. <Blank /> at <Blank /> on <Blank />
          </th>
          <td>
            <span className={styles.boxes}>
              {outcomeBoxes.map((outcome) => (
                <span key={outcome} className={styles.box}>
                  {outcome}
                </span>
              ))}
            </span>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

export const Blank = ({ wide = false }: { readonly wide?: boolean }): ReactNode => (
  <span className={wide ? `${styles.blank} ${styles.wide}` : styles.blank} />
);

function ToWrite({ of }: { readonly of: OnPaper }): ReactNode {
  const measured = [
    ...new Set(of.questions.filter(({ writes }) => writes === "output").map(({ tube }) => tube)),
  ];
  return (
    <div className={styles.lines}>
      {measured.map((tube) => (
        <p key={tube}>
          Volume{tube !== null && `, ${tube}`}: <Blank /> mL, from <Blank /> to <Blank />, looks <Blank />,
          flushed with <Blank /> mL
        </p>
      ))}
      <p>
        Red flag handed to <Blank /> <Blank /> at <Blank />. Told by <Blank />. Call back on <Blank /> at{" "}
        <Blank />.
      </p>
      <p>
        Note: <Blank wide />
      </p>
      <p>
        Rung by <Blank /> <Blank />
      </p>
    </div>
  );
}
