import type { ReactNode } from "react";
import { CriterionReasons, CriterionVerdict } from "#app/output/criterion-verdict.tsx";
import type { OutputPage } from "#app/tubes/tube-page.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { printDay, printInstant } from "#shared/day/print-day.ts";
import styles from "./output.module.css";

type Row = { readonly when: string; readonly figure: string; readonly state: string };

const columns: readonly Column<Row>[] = [
  { head: "Looked at", cell: ({ when }) => <span className={styles.when}>{when}</span> },
  { head: "Net", figure: true, cell: ({ figure }) => figure },
  { head: "Against the row", cell: ({ state }) => state },
];

const oneDecimal = (value: number): number => Math.round(value * 10) / 10;

/** The days or sessions that the verdict rests on. */
function evidenceOf({ criterion, zone }: OutputPage): readonly Row[] {
  const { days, sessions } = criterion.evidence;
  return [
    ...days.map(({ day, state, mlPer24h }) => ({
      when: printDay(day),
      figure: mlPer24h === null ? "no figure" : `${oneDecimal(mlPer24h)} mL/24 h`,
      state,
    })),
    ...sessions.map(({ at, state, ml }) => ({
      when: printInstant(at, zone),
      figure: ml === null ? "no figure" : `${oneDecimal(ml)} mL`,
      state,
    })),
  ];
}

/** The clinic's criterion: verdict, each reason, what stands beside it, the row, and what it was computed from. */
export function CriterionSection({ output }: { readonly output: OutputPage }): ReactNode {
  const rows = evidenceOf(output);
  return (
    <section className={styles.section} id="criterion">
      <h2>Is the numeric part of a removal review met?</h2>
      <CriterionVerdict output={output} />
      <CriterionReasons output={output} />
      {rows.length > 0 && (
        <div className={styles.evidence}>
          <DataTable
            caption="What it was computed from"
            columns={columns}
            rows={rows}
            keyOf={({ when }) => when}
            none=""
          />
        </div>
      )}
    </section>
  );
}
