import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import styles from "./set-aside.module.css";

type Aside = {
  readonly row: number;
  readonly cells: readonly string[];
  readonly reasons: readonly { readonly label: string | null; readonly sentence: string }[];
};

/** The place of a row in the sheet, headings counted. */
export const rowColumn = { head: "Row", cell: ({ row }: Pick<Aside, "row">): ReactNode => row };
export const keyOfRow = ({ row }: Pick<Aside, "row">): string => String(row);

/** A row as the sheet has it. */
export const saysColumn = {
  head: "Says",
  cell: ({ cells }: Pick<Aside, "cells">): ReactNode => (
    <bdi className={styles.cells}>{cells.filter((cell) => cell.trim() !== "").join(" · ")}</bdi>
  ),
};

const columns: readonly Column<Aside>[] = [
  rowColumn,
  saysColumn,
  {
    head: "What to mend",
    cell: ({ reasons }) => (
      <ul className={styles.reasons}>
        {reasons.map(({ label, sentence }) => (
          <li key={`${label} ${sentence}`}>
            {label !== null && <strong>{label}: </strong>}
            {sentence}
          </li>
        ))}
      </ul>
    ),
  },
];

/** Rows of a sheet that are not brought in, each with what it says and what is to mend. */
export const SetAside = ({ rows }: { readonly rows: readonly Aside[] }): ReactNode => (
  <DataTable caption="Set aside" columns={columns} rows={rows} keyOf={keyOfRow} none="No row is set aside." />
);
