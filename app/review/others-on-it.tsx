import type { ReactNode } from "react";
import type { ReviewView } from "#app/review/decision-changed.tsx";
import type { Zone } from "#shared/day/instant.ts";
import { storySentence } from "#shared/words/events.ts";
import { decidedSentence, openedSentence } from "#shared/words/others-on-it.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import styles from "./review.module.css";

type OthersOnItProps = {
  readonly others: ReviewView["others"];
  readonly zone: Zone;
  readonly nameOf: NameOf;
};

/** Who else is at this review, as it was when the page was made. Nothing where nobody is. */
export function OthersOnIt({ others: { opened, decided, now }, zone, nameOf }: OthersOnItProps): ReactNode {
  if (opened.length === 0 && decided.length === 0) return null;
  const looking = { now, zone };
  return (
    <ul className={styles.others} aria-label="Who else is at this review" data-screen-only>
      {decided.map((entry) => (
        <li key={entry.eventId}>
          <strong>{decidedSentence(entry.recordedBy, entry.recordedAt, looking)}</strong>{" "}
          <bdi>{storySentence(entry, nameOf)}</bdi>
        </li>
      ))}
      {opened.map(({ who, at }) => (
        <li key={who}>{openedSentence(who, at, looking)}</li>
      ))}
    </ul>
  );
}
