import type { ReactNode } from "react";
import {
  completeWords,
  coveredWords,
  type NetDay,
  netWords,
  rateWords,
  remarksOf,
} from "#app/output/net-day-words.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { printDay } from "#shared/day/print-day.ts";
import styles from "./output.module.css";

const columns: readonly Column<NetDay>[] = [
  {
    head: "Day",
    cell: ({ day, whole }) => (
      <span className={styles.when}>{`${printDay(day)}${whole ? "" : ", part"}`}</span>
    ),
  },
  { head: "Net", figure: true, cell: (day) => <NetFigure day={day} /> },
  { head: "In 24 h", figure: true, cell: (day) => rateWords(day) },
  { head: "Covered", figure: true, cell: (day) => coveredWords(day) },
  { head: "Complete", cell: (day) => completeWords(day) },
  { head: "Remarks", cell: (day) => remarksOf(day) },
  { head: "Readings", figure: true, cell: ({ readings }) => readings.length },
];

/** A day that nobody measured is a row like any other: missing is not zero. */
function NetFigure({ day }: { readonly day: NetDay }): ReactNode {
  return <span className={day.net.kind === "known" ? styles.net : styles.missing}>{netWords(day)}</span>;
}

type NetDaysTableProps = { readonly days: readonly NetDay[] };

const SHOWN = 14;

/** Net by day of the clinic, newest first, cut where size, mode or place changed; older days folded. */
export function NetDaysTable({ days }: NetDaysTableProps): ReactNode {
  const newest = days.toReversed();
  const older = newest.slice(SHOWN);
  const keyOf = ({ from }: NetDay): string => String(from);
  return (
    <>
      <div className={styles.table}>
        <DataTable
          caption="Net by day, newest first"
          columns={columns}
          rows={newest.slice(0, SHOWN)}
          keyOf={keyOf}
          none="No day yet: nothing is logged."
        />
      </div>
      {older.length > 0 && (
        <details className={styles.older}>
          <summary>Older days</summary>
          <DataTable caption="Older days" columns={columns} rows={older} keyOf={keyOf} none="" />
        </details>
      )}
    </>
  );
}
