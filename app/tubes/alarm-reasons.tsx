import type { ReactNode } from "react";
import { ActButton, ActLinks } from "#app/record/act-links.tsx";
import { mayRecord, type TubeForm, tubeFormHref } from "#app/record/procedures.ts";
import type { Person } from "#shared/access/person.ts";
import { answerableIn } from "#shared/step/answerable.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { actLabels } from "#shared/words/acts.ts";
import { whySentence } from "#shared/words/why.ts";
import styles from "./tube.module.css";

/** Reasons that stand in sight; every one stands under "Why". */
const SHOWN = 5;

type AlarmProps = { readonly step: OpenStep };

/** Why the alarm stands: the newest reasons, without anything to open. */
export function AlarmReasons({ step }: AlarmProps): ReactNode {
  const reasons = answerableIn(step.why);
  const more = reasons.length - SHOWN;
  return (
    <ul className={styles.reasons} aria-label="Reasons of the alarm">
      {reasons.slice(-SHOWN).map(({ key, line }) => (
        <li key={key}>{whySentence(line)}</li>
      ))}
      {more > 0 && <li>{more} older under Why.</li>}
    </ul>
  );
}

/** A level can be accepted as usual where one of the reasons is its row. */
const mayBeUsual = ({ why }: OpenStep): boolean =>
  why.some(({ code }) => code === "alarm-low" || code === "alarm-high");

type ActsProps = AlarmProps & { readonly tubeId: string; readonly person: Person };

/** What answers an alarm, for whoever may. */
export function AlarmActs({ step, tubeId, person }: ActsProps): ReactNode {
  const usual: readonly TubeForm[] = mayBeUsual(step) ? ["usual level accepted"] : [];
  return (
    <>
      {mayRecord(person, "alarm closed") && (
        <ActButton href={tubeFormHref(tubeId, "alarm closed")}>{actLabels["alarm closed"]}</ActButton>
      )}
      <ActLinks
        forms={[...usual, "checked"]}
        hrefOf={(form) => tubeFormHref(tubeId, form)}
        person={person}
        label="What else answers the alarm"
      />
    </>
  );
}
