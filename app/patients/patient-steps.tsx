import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { asksBirthDate, BirthDateLink } from "#app/patients/birth-date-link.tsx";
import styles from "#app/patients/patient.module.css";
import type { PatientPage } from "#app/patients/patient-page.ts";
import { type Meant, RecordsMeant } from "#app/patients/records-meant.tsx";
import { ActButton, ActLinks } from "#app/record/act-links.tsx";
import { formsOfPatientStep } from "#app/record/offered.ts";
import { mayRecord, patientFormHref, tubeFormHref } from "#app/record/procedures.ts";
import { stepPage } from "#app/record/step-page.ts";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import { actLabels } from "#shared/words/acts.ts";
import { ownerText, standingBesideName, stepAsks, stepNames } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";

type PatientStepsProps = Pick<PatientPage, "state" | "steps"> & {
  readonly patientId: string;
  readonly today: Day;
  readonly person: Person;
  /** The records that "two records of one patient" may speak of; null where that is not asked. */
  readonly meant: Meant | null;
};

/** Red flags stand at the head of the page. */
const isRedFlag = ({ kind }: OpenStep): boolean => kind === "red flag";

/** Hospice is asked once of the patient, though it stands beside the dates of each tube. */
const ofThePatient = (lines: readonly ListLine[]): readonly ListLine[] => {
  const hospice = lines.find(({ step }) => step.kind === "hospice");
  return lines.filter((line) => !isRedFlag(line.step) && (line.step.tubeId === null || line === hospice));
};

/** What is open of the patient and not of one tube, each with what it says and the forms that answer it. */
export function PatientSteps(props: PatientStepsProps): ReactNode {
  const lines = ofThePatient(props.steps);
  if (lines.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>Open of the patient</h2>
      {lines.map((line) => (
        <PatientStep key={line.step.id} {...props} line={line} />
      ))}
    </section>
  );
}

function PatientStep({
  line,
  state,
  patientId,
  today,
  person,
  meant,
}: PatientStepsProps & { readonly line: ListLine }): ReactNode {
  const { step, owner } = line;
  return (
    <article className={styles.step}>
      <p>
        <b>{stepNames[step.kind]}</b> {standingBesideName(step, today)}. {stepAsks[step.kind]} Owner:{" "}
        {ownerText(owner)}.
      </p>
      {step.why.map((line) => (
        <p key={JSON.stringify(line)}>
          <bdi>{whySentence(line)}</bdi>
        </p>
      ))}
      {meant !== null && isTwoRecords(step) && <RecordsMeant meant={meant} patientId={patientId} />}
      {mayRecord(person, "removed") && <Removals tubes={meantBy(step, state)} />}
      <ActLinks
        forms={formsOfPatientStep(step)}
        hrefOf={(form) => `${patientFormHref(patientId, form)}${aboutOf(step)}`}
        person={person}
        label={`Ways to answer: ${stepNames[step.kind]}`}
      />
      <PageOfStep step={step} patientId={patientId} />
      {asksBirthDate(step) && (
        <p data-screen-only>
          <BirthDateLink patientId={patientId} person={person} />
        </p>
      )}
    </article>
  );
}

/** A step of a visit or of a call is answered on a page of its own. */
function PageOfStep({ step, patientId }: { readonly step: OpenStep; readonly patientId: string }): ReactNode {
  const act = stepPage(step, patientId);
  return act === null ? null : <ActButton href={act.href}>{act.word}</ActButton>;
}

const reconcileOf = ({ why }: OpenStep) => why.find(({ code }) => code === "reconcile")?.args.about;

const isTwoRecords = (step: OpenStep): boolean => reconcileOf(step) === "two records of one patient";

/** What does not agree goes along in the address of the form, since several may be open. */
const aboutOf = (step: OpenStep): string => {
  const about = reconcileOf(step);
  return about === undefined ? "" : `?${new URLSearchParams({ about: String(about) })}`;
};

/** The tubes of which one is reported out. */
function meantBy(step: OpenStep, { tubes, reportedOut }: PatientTubes): readonly TubeState[] {
  if (step.kind !== "which tube out") return [];
  const [why] = step.why;
  const report = reportedOut.find(({ eventId }) => eventId === why?.eventId);
  return tubes.filter(
    ({ id, status }) => status === "in" && report?.candidates.some(({ tube }) => tube === id),
  );
}

function Removals({ tubes }: { readonly tubes: readonly TubeState[] }): ReactNode {
  if (tubes.length === 0) return null;
  return (
    <ul className={styles.answers} data-screen-only>
      {tubes.map((tube) => (
        <li key={tube.id}>
          <a href={tubeFormHref(tube.id, "removed")}>
            {actLabels.removed}: {numberedTitle(tube)}
          </a>
        </li>
      ))}
    </ul>
  );
}
