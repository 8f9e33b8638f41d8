import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import cells from "#app/lists/cells.module.css";
import { fullNameOf } from "#app/patients/identity-of.ts";
import type { Column } from "#app/ui/data-table.tsx";
import type { Day } from "#shared/day/day.ts";
import { printBirth } from "#shared/day/print-day.ts";
import {
  interpreterWords,
  marksOfCall,
  nextWords,
  reasonsOf,
  thereNowWords,
  triedWords,
} from "#shared/words/call-list.ts";
import styles from "./calls.module.css";

export type CallsPage = Awaited<ReturnType<SignedIn["api"]["calls"]["list"]>>;
export type CallsLine = CallsPage["lines"][number];

/** Whom to ring, why, what was tried, when, and who has it now. The name leads to the call. */
export const callColumns = (today: Day): readonly [Column<CallsLine>, ...Column<CallsLine>[]] => [
  { head: "Whom", cell: ({ patient }) => <Whom patient={patient} /> },
  { head: "Why", cell: (line) => <WhyRung line={line} today={today} /> },
  {
    head: "Tried",
    cell: ({ story }) => triedWords(story, today) ?? <span className={styles.soft}>not yet</span>,
  },
  { head: "When", cell: (line) => <WhenRung line={line} today={today} /> },
  { head: "With", cell: ({ holder }) => (holder === null ? null : <bdi>{holder}</bdi>) },
];

function Whom({ patient }: Pick<CallsLine, "patient">): ReactNode {
  const { id, number, birthOn } = patient;
  return (
    <>
      <a className={cells.name} data-stop href={`/patients/${id}/call`} dir="auto">
        {fullNameOf(patient)}
      </a>{" "}
      <span className={cells.detail}>
        {`${number ?? "no number"}, ${birthOn === null ? "birth date unknown" : `born ${printBirth(birthOn)}`}`}
      </span>
    </>
  );
}

type OfLine = { readonly line: CallsLine; readonly today: Day };

function WhyRung({ line, today }: OfLine): ReactNode {
  const marks = marksOfCall(line, today);
  return (
    <>
      {marks.length > 0 && <strong className={styles.marks}>{marks.join(" · ")}</strong>}
      <ul className={styles.reasons}>
        {reasonsOf(line.steps).map(({ tube, says }) => (
          <li key={`${tube} ${says}`}>
            {tube !== null && <bdi className={styles.tube}>{tube}: </bdi>}
            <bdi>{says}</bdi>
          </li>
        ))}
      </ul>
    </>
  );
}

function WhenRung({ line, today }: OfLine): ReactNode {
  const best = line.contact.telephones.flatMap(({ bestTimes }) => bestTimes ?? []);
  const interpreter = interpreterWords(line);
  return (
    <div className={styles.when}>
      {nextWords(line, today)}
      {best.length > 0 && (
        <span className={cells.detail}>
          best times: <bdi>{best.join("; ")}</bdi>
        </span>
      )}
      {line.there !== null && <span className={cells.detail}>{thereNowWords(line.there)}</span>}
      {interpreter !== null && <span className={cells.detail}>{interpreter}</span>}
    </div>
  );
}
