import type { ReactNode } from "react";
import type { WirePassage } from "#shared/fit/passage.ts";
import type { PlannedPassages } from "#shared/fit/planned-passages.ts";
import { sizeLine, stateLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type PassageLinesProps = { readonly passages: PlannedPassages | null };

/** Both tubes, each in two lines, so that neither hides the other: by size, and by state. */
export function PassageLines({ passages }: PassageLinesProps): ReactNode {
  if (passages === null) return null;
  return (
    <output className={styles.lines}>
      <TubeLines of={tubeInPlace} answer={passages.inPlace.answer} />
      <TubeLines of={tubeToCome} answer={passages.toCome.answer} />
    </output>
  );
}

export const tubeInPlace = "The tube in place";
export const tubeToCome = "The tube to come";

type TubeLinesProps = { readonly of: string; readonly answer: WirePassage };

/** What a wire meets in one tube. Only what needs someone is in the accent: what stops it, or may. */
export function TubeLines({ of, answer }: TubeLinesProps): ReactNode {
  const { bySize, byState } = answer;
  const stops = bySize.verdict === "does not pass" || bySize.verdict === "doubt";
  return (
    <div className={styles.tube}>
      <p className={styles.of}>{of}</p>
      <p className={styles.line} data-now={stops || undefined}>
        {sizeLine(bySize)}
      </p>
      <p className={styles.line} data-now={byState.state === "in doubt" || undefined}>
        {stateLine(byState)}
      </p>
    </div>
  );
}
