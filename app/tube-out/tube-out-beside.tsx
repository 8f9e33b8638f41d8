import type { ReactNode } from "react";
import styles from "#app/flags/flags.module.css";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { Now } from "#app/ui/now.tsx";
import { type HowFarOut, tractOut } from "#shared/call/tube-out.ts";
import type { Day } from "#shared/day/day.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { TubeThatMayBeOut } from "#shared/record/call/out-context.ts";
import { capital } from "#shared/words/capital.ts";
import { reachWords } from "#shared/words/red-flag-page.ts";
import { outRowLines, sizesLine, slowLine, tractOutLine } from "#shared/words/tube-out.ts";

export type SaidOfOut = {
  readonly tube?: TubeThatMayBeOut | undefined;
  readonly out?: HowFarOut | undefined;
  readonly when?: WhenAt | undefined;
};

/** What holds until somebody is reached, right after it is said how far the tube came. */
export function HoldsUntilReached({ said: { tube, out } }: { readonly said: SaidOfOut }): ReactNode {
  if (tube === undefined || out === undefined) return null;
  const row = tube.rows[out];
  return (
    <p role="status">
      Until somebody is reached: {row === null ? "no row says what to do" : <b>{row.untilReached}</b>}.
    </p>
  );
}

type BesideProps = {
  readonly said: SaidOfOut;
  readonly today: Day;
  /** Nobody has approved the table. */
  readonly isExample: boolean;
};

/** What the rows say of the tube that was chosen, while the rest is typed: shown, not decided. */
export function TubeOutBeside({ said, today, isExample }: BesideProps): ReactNode {
  const { tube, out = "out", when } = said;
  if (tube === undefined) return <p>Choose the tube: what its rows say then stands here.</p>;
  // A tract grew no older after its tube came out. Until a day is typed it is today; a day that nobody knows is none.
  const stands = tractOut(tube.tract, when === undefined ? today : when.when.earliest);
  const row = tube.rows[out];
  return (
    <dl className={styles.beside}>
      <dt>Tract</dt>
      <dd>
        {stands.first === "immature" ? (
          <Now>{tractOutLine(stands, tube.tract)}</Now>
        ) : (
          tractOutLine(stands, tube.tract)
        )}{" "}
        {slowLine(tube.slow)}
      </dd>
      <dt>What the row says</dt>
      <dd>
        {outRowLines(row, stands).map((line) => (
          <p key={line}>{line}</p>
        ))}
        {isExample && <ExampleMark />}
      </dd>
      <dt>How soon</dt>
      <dd>
        {tube.flag === null
          ? "The table has no red flag for it: say how soon below."
          : `${capital(tube.flag.says)}. ${reachWords[tube.flag.level]}`}
      </dd>
      <dt>To have at hand</dt>
      <dd>{sizesLine(tube)}</dd>
    </dl>
  );
}
