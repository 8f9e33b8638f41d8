import type { ReactNode } from "react";
import type { StoryEntry } from "#app/story/story.tsx";
import type { Day } from "#shared/day/day.ts";
import { printWhen } from "#shared/day/print-day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { storySentence } from "#shared/words/events.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import { standingBesideName, stepNames } from "#shared/words/steps.ts";
import styles from "./how-it-stands.module.css";

type StandsProps = {
  readonly steps: readonly OpenStep[];
  readonly story: readonly StoryEntry[];
  readonly today: Day;
  readonly nameOf: NameOf;
  /** What it means that no step is open. */
  readonly none: string;
};

/**
 * What comes next and what was recorded last, as the record stands. Asked anew once something is saved, so that the new date and
 * the entry in words are seen at once; before that, it keeps an entry from being made twice.
 */
export function HowItStands({ steps, story, today, nameOf, none }: StandsProps): ReactNode {
  const [next] = steps;
  const last = story.find(({ standing }) => standing !== "undone");
  return (
    <div className={styles.stands} role="status">
      <p>
        {next === undefined ? none : `Next: ${stepNames[next.kind]}, ${standingBesideName(next, today)}.`}
      </p>
      {last !== undefined && (
        <p>
          Last recorded: <bdi>{storySentence(last, nameOf)}</bdi> {printWhen(last.when)}.
        </p>
      )}
    </div>
  );
}
