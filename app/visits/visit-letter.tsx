import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import diary from "#app/tubes/diary-sheet.module.css";
import { HomeIdentity } from "#app/tubes/home-identity.tsx";
import paper from "#app/tubes/home-paper.module.css";
import { WhenToCall } from "#app/tubes/when-to-call.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { titlesOf } from "#shared/tube/name.ts";
import { homeFlags } from "#shared/words/home-flags.ts";
import { listNotes, speaksOfThisAge } from "#shared/words/home-paper.ts";
import {
  doneAtVisit,
  letterCautions,
  MAY_BE_OTHERWISE,
  toBring,
  whenAtHome,
} from "#shared/words/visit-letter.ts";
import styles from "./visit-letter.module.css";

type LetterView = Awaited<ReturnType<SignedIn["api"]["visit"]["letter"]>>;
type LetterProps = { readonly view: LetterView };

/** Said to whoever prints it, never on the paper. */
export function ForStaff({ patient }: Pick<LetterView, "patient">): ReactNode {
  const { language, needsInterpreter } = patient;
  const speaks =
    language === "" ? "The patient's language is not on record." : `The patient speaks ${language}.`;
  const needs =
    needsInterpreter === null
      ? "Nobody has asked whether an interpreter is needed."
      : `An interpreter is ${needsInterpreter ? "" : "not "}needed.`;
  return (
    <p data-screen-only>
      The letter is in English. {speaks} {needs}
    </p>
  );
}

/** The letter itself: when, where and what, in plain words; what to bring; and on its back when to call whom. */
export function VisitLetter({ view }: LetterProps): ReactNode {
  const { visit, room, tubes, patient, today, takeHome } = view;
  const titles = titlesOf(tubes.map(({ tube }) => tube));
  const { place, on } = visit;
  return (
    <article className={diary.sheet}>
      <header>
        <div className={diary.opening}>
          <h2 className={diary.title}>Your visit</h2>
          <p>Printed {printDay(today)}</p>
        </div>
        <HomeIdentity patient={patient} />
        <ClinicNumber clinic={takeHome.clinic} />
      </header>
      <section className={styles.part}>
        {visit.state === "proposed" && (
          <p className={paper.strong}>This time is proposed: please ring us to say whether you can come.</p>
        )}
        <p className={styles.when}>{whenAtHome(on, place)}.</p>
        <p>
          Where:{" "}
          {place.kind === "elsewhere" ? (
            <>
              <bdi className={paper.strong}>{place.where}</bdi>. This visit is not in our clinic.
            </>
          ) : (
            <>
              <bdi className={paper.strong}>{takeHome.clinic.name}</bdi>, <bdi>{room}</bdi>. The room is kept
              for you for {place.minutes} minutes; waiting and resting come on top.
            </>
          )}
        </p>
      </section>
      <section className={styles.part}>
        <h3 className={styles.head}>What is done</h3>
        {tubes.map(({ tube, act }) => (
          <p key={tube.id}>{doneAtVisit(tube, titles.get(tube.id), act)}</p>
        ))}
        <p>{MAY_BE_OTHERWISE}</p>
      </section>
      <BringAndTell view={view} />
      <p className={styles.part}>
        If you cannot come, ring us as soon as you know: the visit is moved, not dropped.
      </p>
      <CallAbout view={view} />
    </article>
  );
}

function BringAndTell({ view }: LetterProps): ReactNode {
  const { things, isExample, visit } = view;
  const { bring, tell } = toBring(things);
  return (
    <section className={styles.part}>
      <h3 className={styles.head}>Please bring {isExample && <ExampleMark />}</h3>
      <ul className={diary.howTo}>
        {bring.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {visit.place.kind === "elsewhere" && (
        <p>Ask there what else to bring, and whether you may eat before.</p>
      )}
      {tell.length > 0 && (
        <>
          <h3 className={styles.head}>Please tell us before</h3>
          <ul className={diary.howTo}>
            {tell.map((line) => (
              <li key={line}>{line}.</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** When to call whom, by the clinic's list of today, about any of the tubes of the visit. */
function CallAbout({ view }: LetterProps): ReactNode {
  const { tubes, patient, takeHome } = view;
  const { approved, redFlags, output } = takeHome;
  const adult = tubes.filter(({ row }) => speaksOfThisAge(row));
  const [first] = tubes;
  const found = first?.row.found ?? "no row";
  const notes = listNotes({ approved, found, birthKnown: patient.birthOn !== null });
  const levels =
    adult.length === 0
      ? []
      : homeFlags(
          redFlags,
          adult.map(({ tube }) => ({ tube, output, unit: "mL" })),
        );
  return <WhenToCall {...{ patient, takeHome, notes, levels }} cautions={letterCautions} />;
}
