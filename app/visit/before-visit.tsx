import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { VisitPage } from "#app/visit/visit-pages.ts";
import { bleedingLine } from "#shared/words/exchange-plan.ts";
import { onRecord } from "#shared/words/on-record.ts";
import {
  answerWords,
  leadWords,
  NO_PREREQUISITE_ROW,
  prerequisiteSays,
  settleByWords,
  thingLabels,
} from "#shared/words/prerequisites.ts";
import styles from "./visit.module.css";

type Row = VisitPage["prerequisites"][number] & { readonly onRecord: string | null };

const columns: readonly Column<Row>[] = [
  { head: "To settle", cell: ({ thing }) => thingLabels[thing] },
  {
    head: "How it stands",
    cell: ({ open, answer }) => (
      <>
        {open ? <b>{answerWords[answer?.state ?? "open"]}</b> : answerWords[answer?.state ?? "open"]}
        {answer?.says && <bdi>: {answer.says}</bdi>}
      </>
    ),
  },
  { head: "By when", cell: (row) => (row.open ? settleByWords(row) : "") },
  { head: "On record", cell: (row) => <bdi>{row.onRecord}</bdi> },
  {
    head: "What the rows say",
    cell: (row) => (
      <>
        {prerequisiteSays(row)}
        {row.leadHours !== null && `; ${leadWords(row.leadHours)}`}
      </>
    ),
  },
];

/** What is to be settled before a visit, the open ones first, with what is on record beside each. Both bleeding classes stand beneath; no hold is computed. */
export function BeforeVisit({ view }: { readonly view: VisitPage }): ReactNode {
  const { prerequisites, bleeding, visit } = view;
  if (visit.place.kind === "elsewhere")
    return <p>Booked elsewhere: what is to be settled first is asked there.</p>;
  const known = { ...view, contact: view.patient };
  const rows = prerequisites
    .map((row) => ({ ...row, onRecord: onRecord(row.thing, known) }))
    .toSorted((a, b) => Number(b.open) - Number(a.open));
  return (
    <>
      <DataTable
        caption="Before the visit"
        columns={columns}
        rows={rows}
        keyOf={({ thing }) => thing}
        none={NO_PREREQUISITE_ROW}
      />
      {bleeding !== null && bleeding.rows.length > 0 && (
        <details className={styles.section}>
          <summary>Bleeding risk, both classes, for discussion: no hold is computed</summary>
          <ul>
            {bleeding.rows.map((row) => (
              <li key={row.class}>{bleedingLine(row)}</li>
            ))}
          </ul>
          {bleeding.liver !== null && <p>{bleeding.liver}.</p>}
        </details>
      )}
    </>
  );
}
