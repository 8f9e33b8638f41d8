import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import type { Column } from "#app/ui/data-table.tsx";
import { Now } from "#app/ui/now.tsx";
import { visitHref } from "#app/visit/visit-pages.ts";
import type { Day } from "#shared/day/day.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { toSettleWords, visitStands, visitTime } from "#shared/words/visit-day.ts";
import styles from "./visits.module.css";

export type VisitLine = Awaited<
  ReturnType<SignedIn["api"]["visit"]["days"]>
>["days"][number]["others"][number];

function Time({ line }: { readonly line: VisitLine }): ReactNode {
  return (
    <a className={styles.time} data-stop href={visitHref(line.patient.id, line.visit.id)}>
      {visitTime(line.visit.place)}
    </a>
  );
}

function Tubes({ tubes }: Pick<VisitLine, "tubes">): ReactNode {
  return tubes.map(({ tubeId, name, act }) => (
    <p key={tubeId}>
      <a href={`/tubes/${tubeId}`}>
        <bdi>{name}</bdi>
      </a>
      : {act}
    </p>
  ));
}

function Stands({ line: { visit, against } }: { readonly line: VisitLine }): ReactNode {
  return (
    <>
      <bdi>{visitStands(visit)}</bdi>
      {visit.urgent && (
        <>
          , <Now>urgent</Now>
        </>
      )}
      {against.length > 0 && (
        <p>
          <Now>Could not be booked here now.</Now> {against.map(refusalSentence).join(" ")}
        </p>
      )}
    </>
  );
}

/** The columns of visits: when, whose, which tubes, how each stands, what is open before it. */
export const visitColumns = (today: Day) =>
  [
    { head: "Time", cell: (line) => <Time line={line} /> },
    { head: "Patient", cell: ({ patient }) => <PatientCell patient={patient} /> },
    { head: "Tubes", cell: ({ tubes }) => <Tubes tubes={tubes} /> },
    { head: "How it stands", cell: (line) => <Stands line={line} /> },
    { head: "Before it", cell: ({ toSettle }) => toSettleWords(toSettle, today) },
  ] as const satisfies readonly Column<VisitLine>[];
