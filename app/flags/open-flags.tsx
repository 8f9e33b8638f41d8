import type { ReactNode } from "react";
import { flagStepAct } from "#app/flags/flag-pages.ts";
import { ActButton } from "#app/record/act-links.tsx";
import { Now } from "#app/ui/now.tsx";
import type { OpenStep } from "#shared/step/step.ts";
import { whySentence } from "#shared/words/why.ts";
import styles from "./flags.module.css";

type OpenFlagsProps = {
  /** Steps of which those of red flags are shown. */
  readonly steps: readonly OpenStep[];
  readonly patientId: string;
  /** What the tube of a flag is called; the patient's own has none. */
  readonly nameOf: (tubeId: string) => string | undefined;
};

/** Red flags until somebody records what was done, each with who has it and the one act that it needs. */
export function OpenFlags({ steps, patientId, nameOf }: OpenFlagsProps): ReactNode {
  const flags = steps.filter(({ kind }) => kind === "red flag");
  return flags.map((step) => {
    const act = flagStepAct(step, patientId);
    const [told, ...course] = step.why;
    const tube = step.tubeId === null ? "Of the patient" : nameOf(step.tubeId);
    return (
      <section key={step.id} className={styles.open} aria-label="Red flag">
        <p>
          <Now>
            <bdi>{told && whySentence(told)}</bdi>
          </Now>{" "}
          {tube !== undefined && `${tube}.`}
        </p>
        {course.map((line) => (
          <p key={line.code}>
            <bdi>{whySentence(line)}</bdi>
          </p>
        ))}
        {act !== null && <ActButton href={act.href}>{act.word}</ActButton>}
      </section>
    );
  });
}
