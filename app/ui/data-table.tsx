import type { ReactNode } from "react";
import styles from "./data-table.module.css";

export type Column<Row> = {
  /** The head in words; also stands before the cell's text on a narrow page. */
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand right, digit under digit. */
  readonly figure?: boolean;
  /** Links and buttons alone: left out on paper. */
  readonly acts?: boolean;
};

type DataTableProps<Row> = {
  readonly caption: string;
  /** The first column names the row. */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  /** How many stand on the pages before these. */
  readonly before?: number | undefined;
  /** How many there are, where that is more than the rows shown. */
  readonly total?: number;
  /** Said in place of how many rows there are, where rows are of more than one sort. */
  readonly count?: string;
  /** Said in place of the table when it has no rows: what that means, not only that it is empty. */
  readonly none: string;
};

/** "7", where all of them are shown; "40 of 132" from the first; "41 to 80 of 132". */
function countOf({ shown, before, total }: { shown: number; before: number; total: number }): string {
  if (shown >= total) return String(shown);
  return before === 0 ? `${shown} of ${total}` : `${before + 1} to ${before + shown} of ${total}`;
}

/** A table that is a table: aligned, tight, its heads in sight while it scrolls and on each printed sheet. */
export function DataTable<Row>({
  caption,
  columns,
  rows,
  keyOf,
  before = 0,
  total = rows.length,
  count = countOf({ shown: rows.length, before, total }),
  none,
}: DataTableProps<Row>): ReactNode {
  if (rows.length === 0) {
    return (
      <section>
        <h2 className={styles.caption}>{caption}</h2>
        <p className={styles.none}>{none}</p>
      </section>
    );
  }
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>
        {caption}
        <span className={styles.count}>{count}</span>
      </caption>
      <thead className={styles.head}>
        <tr>
          {columns.map((column) => (
            <th
              key={column.head}
              scope="col"
              className={column.figure ? styles.figure : undefined}
              data-screen-only={column.acts || undefined}
            >
              {column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={keyOf(row)} className={styles.row}>
            {columns.map((column, index) => (
              <Cell key={column.head} column={column} row={row} first={index === 0} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type CellProps<Row> = { readonly column: Column<Row>; readonly row: Row; readonly first: boolean };

function Cell<Row>({ column, row, first }: CellProps<Row>): ReactNode {
  if (first) return <th scope="row">{column.cell(row)}</th>;
  return (
    <td
      className={column.figure ? styles.figure : undefined}
      data-head={column.head}
      data-screen-only={column.acts || undefined}
    >
      {column.cell(row)}
    </td>
  );
}
