import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { behind, weightOf } from "#app/lists/standing.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { Now } from "#app/ui/now.tsx";
import type { Day } from "#shared/day/day.ts";
import { stepStanding } from "#shared/words/steps.ts";
import styles from "./cells.module.css";

type StandingCellProps = {
  readonly line: ListLine;
  readonly today: Day;
  /** True where one mark for the whole list does not already say it. */
  readonly marksExample: boolean;
};

/** Where a step stands, as one plain sentence in the weight that it deserves, and the dates behind it. */
export function StandingCell({ line, today, marksExample }: StandingCellProps): ReactNode {
  return (
    <>
      <Standing line={line} today={today} />{" "}
      <span className={styles.detail}>
        {behind(line, today)}
        {marksExample && line.row === "example" && (
          <>
            {" "}
            <ExampleMark />
          </>
        )}
      </span>
    </>
  );
}

function Standing({ line, today }: { readonly line: ListLine; readonly today: Day }): ReactNode {
  const sentence = stepStanding(line.step, today);
  switch (weightOf(line, today)) {
    case "now":
      return <Now>{sentence}</Now>;
    case "cannot tell":
      return <strong>{sentence}</strong>;
    case "in turn":
      return <span className={styles.turn}>{sentence}</span>;
  }
}
