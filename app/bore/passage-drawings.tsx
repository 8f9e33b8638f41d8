import type { ReactNode } from "react";
import { BoreDrawing } from "#app/bore/bore-drawing.tsx";
import { TubeLines, tubeInPlace, tubeToCome } from "#app/bore/passage-lines.tsx";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import type { PlannedPassage, PlannedPassages } from "#shared/fit/planned-passages.ts";
import { sizeGrounds } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type PassageDrawingsProps = {
  readonly passages: PlannedPassages | null;
  /** Set where the lines do not stand elsewhere on the page. */
  readonly withLines?: boolean;
};

/** The wire in both tubes, drawn, with what each answer rests on. */
export function PassageDrawings({ passages, withLines = false }: PassageDrawingsProps): ReactNode {
  if (passages === null) return null;
  return (
    <div className={styles.drawings}>
      <Drawn of={tubeInPlace} planned={passages.inPlace} withLines={withLines} />
      <Drawn of={tubeToCome} planned={passages.toCome} withLines={withLines} />
    </div>
  );
}

type DrawnProps = { readonly of: string; readonly planned: PlannedPassage; readonly withLines: boolean };

function Drawn({ of, planned, withLines }: DrawnProps): ReactNode {
  const { passage, outside, answer } = planned;
  const grounds = sizeGrounds(answer.bySize);
  return (
    <section className={styles.drawn}>
      {withLines ? <TubeLines of={of} answer={answer} /> : <p className={styles.of}>{of}</p>}
      <BoreDrawing of={of} profile={boreProfile(passage, outside)} />
      {grounds.length > 0 && (
        <details className={styles.grounds}>
          <summary>What this rests on</summary>
          <ul>
            {grounds.map((ground) => (
              <li key={ground}>{ground}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
