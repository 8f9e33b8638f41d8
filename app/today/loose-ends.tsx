import type { ReactNode } from "react";
import type { ListLine, TodayPage } from "#app/lists/list-line.ts";
import { partWords } from "#app/today/part-words.ts";
import { StepsTable } from "#app/today/steps-table.tsx";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";
import { type StepKind, stepKinds } from "#shared/tube/step-kinds.ts";
import { stepNames } from "#shared/words/steps.ts";
import styles from "./today.module.css";

type LooseEndsProps = {
  readonly lines: readonly ListLine[];
  readonly total: number;
  readonly kinds: TodayPage["looseEnds"];
  /** Said where there is none. */
  readonly none: string;
  readonly today: Day;
  readonly person: Person;
  readonly marksExample: boolean;
  /** Where all of them stand. */
  readonly allHref: string;
};

const { head } = partWords["loose-ends"];

const isKind = (text: string): text is StepKind => stepKinds.some((kind) => kind === text);

/** Records in which something is missing or does not agree: folded, since none of it is a date that somebody waits for. */
export function LooseEnds({ kinds, none, ...every }: LooseEndsProps): ReactNode {
  const { total } = every;
  if (total === 0) {
    return (
      <section>
        <h2>{head}</h2>
        <p className={styles.none}>{none}</p>
      </section>
    );
  }
  const named = kinds.map(({ kind, count }) => `${isKind(kind) ? stepNames[kind] : kind} (${count})`);
  return (
    <details className={styles.loose}>
      <summary>
        <h2>{head}</h2> <span className={styles.count}>{total}</span>{" "}
        <span className={styles.kinds}>{named.join(", ")}</span>
      </summary>
      <StepsTable caption="Something is missing or does not agree" none="" {...every} />
    </details>
  );
}
