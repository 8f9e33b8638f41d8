import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { may } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import { windowWords } from "#shared/words/proposed-days.ts";
import { stepNames } from "#shared/words/steps.ts";
import styles from "./tube.module.css";

type Proposal = TubePage["proposals"][number];

/** What stands and what would stand, a line for each step. */
export function ProposedLines({ proposals }: { readonly proposals: readonly Proposal[] }): ReactNode {
  return (
    <ul>
      {proposals.map(({ id, step, stood, proposed }) => (
        <li key={id}>
          <b>{stepNames[step]}</b> stands at {windowWords(stood)}; proposed: {windowWords(proposed)}.
        </li>
      ))}
    </ul>
  );
}

type ProposedDatesProps = { readonly view: TubePage; readonly person: Person };

/** Newer rows or rules would date this tube otherwise: the old dates stand until somebody confirms. */
export function ProposedDates({ view, person }: ProposedDatesProps): ReactNode {
  if (view.proposals.length === 0) return null;
  return (
    <section className={styles.proposed}>
      <h2>New dates are proposed</h2>
      <ProposedLines proposals={view.proposals} />
      {may(person, "record.datesConfirmed") && (
        <a href={`/tubes/${view.tube.id}/record/dates-confirmed`} data-screen-only>
          Look at them and confirm
        </a>
      )}
    </section>
  );
}
