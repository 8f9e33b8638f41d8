import type { ReactNode } from "react";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { HomeIdentity } from "#app/tubes/home-identity.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { titlesOf } from "#shared/tube/name.ts";
import { emergencyCaution, listNotes, onCallRoute, speaksOfThisAge } from "#shared/words/home-paper.ts";
import { type CardLine, cardFront, cardIfOut } from "#shared/words/tube-card.ts";
import paper from "./home-paper.module.css";
import styles from "./tube-card.module.css";

type TubeCardProps = { readonly view: TubePage };

type LinesProps = {
  readonly lines: readonly CardLine[];
  /** The last line rests on rows that nobody has approved. */
  readonly isExample?: boolean;
};

function Lines({ lines, isExample = false }: LinesProps): ReactNode {
  return (
    <dl className={styles.lines}>
      {lines.map(({ word, says }, index) => (
        <div key={word}>
          <dt>{word}:</dt>{" "}
          <dd>
            <bdi>{says}</bdi> {isExample && index === lines.length - 1 && <ExampleMark />}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** Millimetres: two sides of ISO/IEC 7810 ID-1 beside each other, and what the marks stand away from them. */
const card = { wide: 171.2, high: 53.98, away: 5, mark: 3 } as const;

/** Where to cut, at the corners, and where to fold, in the middle. */
function CropMarks(): ReactNode {
  const { wide, high, away, mark } = card;
  const [right, bottom] = [wide + 2 * away, high + 2 * away];
  return (
    <svg
      className={styles.marks}
      viewBox={`0 0 ${right} ${bottom}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {[away, right / 2, right - away].map((x) => (
        <path key={x} d={`M${x} 0V${mark}M${x} ${bottom - mark}V${bottom}`} />
      ))}
      {[away, bottom - away].map((y) => (
        <path key={y} d={`M0 ${y}H${mark}M${right - mark} ${y}H${right}`} />
      ))}
    </svg>
  );
}

/** Both sides of the card, beside each other: cut along the marks, folded in the middle. */
export function TubeCard({ view }: TubeCardProps): ReactNode {
  const { tube, others, patient, steps, today, takeHome, row, approved } = view;
  const notes = listNotes({
    approved: takeHome.approved,
    found: row.found,
    birthKnown: patient.birthOn !== null,
  });
  return (
    <>
      <p className={styles.howTo}>
        Cut along the marks and fold in the middle: 85.6 by 54 mm, as a bank card is.
      </p>
      <div className={styles.card}>
        <CropMarks />
        <section className={styles.side} aria-label="Front of the card">
          <p className={styles.head}>Tube card: keep this card with you</p>
          <HomeIdentity patient={patient} />
          <p>
            <bdi className={paper.strong}>{titlesOf([tube, ...others]).get(tube.id)}</bdi>
          </p>
          <Lines lines={cardFront({ tube, steps, today })} isExample={approved === null} />
          <p className={styles.foot}>Printed {printDay(today)}.</p>
        </section>
        <section className={styles.side} aria-label="Back of the card">
          <ClinicNumber clinic={takeHome.clinic} />
          {speaksOfThisAge(row) && <Lines lines={cardIfOut(takeHome, tube)} />}
          <p>{emergencyCaution}</p>
          <p>
            {onCallRoute} <span className={paper.blank} />
          </p>
          <p className={styles.foot}>
            {takeHome.approved === null && <ExampleMark />} {notes.join(" ")}
          </p>
        </section>
      </div>
    </>
  );
}
