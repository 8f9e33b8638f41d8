import type { ReactNode } from "react";
import styles from "./data-table.module.css";

export type Column<Row> = {
  /** The head in words; also stands before the cell's text on a narrow page. */
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand right, digit under digit. */
  readonly figure?: boolean;
};

type DataTableProps<Row> = {
  readonly caption: string;
  /** The first column names the row. */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  /** How many there are, where that is more than the rows shown. */
  readonly total?: number;
  /** Said in place of the table when it has no rows: what that means, not only that it is empty. */
  readonly none: string;
};

/** A table that is a table: aligned, tight, its heads in sight while it scrolls and on each printed sheet. */
export function DataTable<Row>({
  caption,
  columns,
  rows,
  keyOf,
  total,
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
        <span className={styles.count}>
          {total === undefined || total === rows.length ? rows.length : `${rows.length} of ${total}`}
        </span>
      </caption>
      <thead className={styles.head}>
        <tr>
          {columns.map((column) => (
            <th key={column.head} scope="col" className={column.figure ? styles.figure : undefined}>
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
    <td className={column.figure ? styles.figure : undefined} data-head={column.head}>
      {column.cell(row)}
    </td>
  );
}
