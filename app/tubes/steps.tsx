import type { ReactNode } from "react";
import { ActButton, ActLinks } from "#app/record/act-links.tsx";
import { afterFragment, afterOut, formOfStep, patientFormOfStep } from "#app/record/offered.ts";
import { mayRecord, patientFormHref, tubeFormHref } from "#app/record/procedures.ts";
import { stepPage } from "#app/record/step-page.ts";
import { AlarmActs, AlarmReasons } from "#app/tubes/alarm-reasons.tsx";
import { ownerToday } from "#app/tubes/step-owner.ts";
import { StepWhy } from "#app/tubes/step-why.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { Now } from "#app/ui/now.tsx";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { isUrgent, type OpenStep } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { actLabels } from "#shared/words/acts.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import { standingBesideName, stepAsksOf, stepNames } from "#shared/words/steps.ts";
import styles from "./tube.module.css";

export type Beside = {
  readonly today: Day;
  readonly person: Person;
  readonly nameOf: NameOf;
  readonly patientId: string;
};

type StepsProps = Beside & { readonly steps: readonly OpenStep[]; readonly tube: TubeState };

const needsNow = ({ kind, latest }: OpenStep, today: Day): boolean =>
  isUrgent(kind) || (latest !== null && latest < today);

const isExample = ({ why }: OpenStep): boolean => why.some(({ code }) => code === "row-example");

/** What comes next, with the one act that it needs; then every other open step. Each opens its why. */
export function Steps({ steps, tube, ...beside }: StepsProps): ReactNode {
  const [next, ...others] = steps;
  if (next === undefined) return <p className={styles.ended}>This record has ended: nothing is open.</p>;
  return (
    <>
      <NextStep step={next} tube={tube} {...beside} />
      {others.length > 0 && (
        <section className={styles.others}>
          <h2>Also open</h2>
          {others.map((step) => (
            <OtherStep key={step.id} step={step} tube={tube} {...beside} />
          ))}
        </section>
      )}
    </>
  );
}

type StepProps = Beside & { readonly step: OpenStep; readonly tube: TubeState };

function NextStep({ step, tube, ...beside }: StepProps): ReactNode {
  const { today, nameOf } = beside;
  const standing = standingBesideName(step, today);
  return (
    <section className={styles.next}>
      <h2 className={styles.nextName}>{stepNames[step.kind]}</h2>
      <p className={styles.standing}>{needsNow(step, today) ? <Now>{standing}</Now> : standing}</p>
      {step.kind === "alarm" && <AlarmReasons step={step} />}
      <p>{stepAsksOf(step.kind, tube.role)}</p>
      <StepActs step={step} tube={tube} {...beside} />
      <Dates step={step} />
      <p>Owner: {ownerToday(step, today, nameOf)}.</p>
      <details>
        <summary>Why</summary>
        <StepWhy step={step} />
      </details>
    </section>
  );
}

/** Of a tube that is out, or of a piece left inside, several answers are possible and none is likelier; else one form. */
function StepActs({ step, tube, person, patientId }: StepProps): ReactNode {
  if (step.kind === "tube out" || step.kind === "fragment retained")
    return (
      <ActLinks
        forms={step.kind === "tube out" ? afterOut : afterFragment}
        hrefOf={(form) => tubeFormHref(tube.id, form)}
        person={person}
        label="Ways to go on"
      />
    );
  if (step.kind === "alarm") return <AlarmActs step={step} tubeId={tube.id} person={person} />;
  if (step.kind === "contradiction") return <ActButton href="#story">Look at both entries</ActButton>;
  const act = actOf(step, { tube, person, patientId });
  return act === null ? null : <ActButton href={act.href}>{act.word}</ActButton>;
}

type ActsOf = Pick<StepProps, "tube" | "person" | "patientId">;

/** The form that a step most likely ends in, of the tube or of the patient, where this person may record it. */
function actOf(step: OpenStep, { tube, person, patientId }: ActsOf): { href: string; word: string } | null {
  const { kind } = step;
  const page = stepPage(step, patientId);
  if (page !== null) return page;
  const form = formOfStep[kind];
  if (form !== null && mayRecord(person, form))
    return { href: tubeFormHref(tube.id, form), word: actLabels[form] };
  const ofPatient = patientFormOfStep[kind];
  if (ofPatient === undefined || !mayRecord(person, ofPatient)) return null;
  return { href: patientFormHref(patientId, ofPatient), word: actLabels[ofPatient] };
}

const ends = ["earliest", "target", "latest"] as const;

function Dates({ step }: { readonly step: OpenStep }): ReactNode {
  const dated = ends.flatMap((end) => (step[end] === null ? [] : [{ end, day: step[end] }]));
  if (dated.length === 0 || (dated.length === 1 && step.latest === null)) return null;
  return (
    <div className={styles.dates}>
      <dl>
        {dated.map(({ end, day }) => (
          <div key={end} className={styles.end}>
            <dt>{end}</dt>
            <dd>{printDay(day)}</dd>
          </div>
        ))}
      </dl>
      {isExample(step) && <ExampleMark />}
    </div>
  );
}

function OtherStep({ step, tube, ...beside }: StepProps): ReactNode {
  const { today, nameOf } = beside;
  const act = actOf(step, { tube, ...beside });
  const standing = standingBesideName(step, today);
  return (
    <details className={styles.other}>
      <summary>
        <b>{stepNames[step.kind]}</b> {needsNow(step, today) ? <Now>{standing}</Now> : standing}
      </summary>
      <Dates step={step} />
      <p>
        {stepAsksOf(step.kind, tube.role)} Owner: {ownerToday(step, today, nameOf)}.{" "}
        {act !== null && (
          <a href={act.href} data-screen-only>
            {act.word}
          </a>
        )}
      </p>
      <StepWhy step={step} />
    </details>
  );
}
