import type { ReactNode } from "react";
import type { ReviewView } from "#app/review/decision-changed.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { printWhen } from "#shared/day/print-day.ts";
import { decidedNames } from "#shared/words/decisions.ts";
import { storySentence } from "#shared/words/events.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import styles from "./review.module.css";

type DecisionProps = {
  readonly view: Pick<TubePage, "story" | "tube">;
  readonly review: ReviewView;
  readonly nameOf: NameOf;
};

/** What is written by hand where nothing is decided. */
const blanks = ["Decided", "Who does what, by when", "In words", "Physician, day and time"] as const;

/** On paper alone: the decision that stands, or room for one. One that rested on other figures is no answer to these. */
export function DecisionOnPaper({ view: { story, tube }, review, nameOf }: DecisionProps): ReactNode {
  const { lastReview, changes } = review;
  const entry = lastReview && story.find(({ eventId }) => eventId === lastReview.eventId);
  const stands = entry != null && changes.length === 0;
  return (
    <section className={styles.decision} data-paper-only>
      <h2>Decision</h2>
      {entry != null && (
        <p>
          {printWhen(entry.when)}: <bdi>{storySentence(entry, nameOf)}</bdi>
          {tube.decided.length > 0 &&
            ` Not done yet: ${tube.decided.map(({ what }) => decidedNames[what].toLowerCase()).join(", ")}.`}
        </p>
      )}
      {!stands && (
        <dl className={styles.blanks}>
          {blanks.map((word) => (
            <div key={word}>
              <dt>{word}</dt>
              <dd />
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
