import type { ReactNode } from "react";
import { rowHref } from "#app/protocol/draft/row-href.ts";
import { intervalColumns } from "#app/protocol/interval-columns.ts";
import styles from "#app/protocol/protocol.module.css";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf } from "#shared/protocol/rows/address.ts";
import { listsOfRows } from "#shared/protocol/rows/rows-of.ts";
import { type IntervalWords, intervalWords } from "#shared/words/protocol/interval-rows.ts";
import { rowName } from "#shared/words/protocol/row-names.ts";
import type { RowWords } from "#shared/words/protocol/row-words.ts";
import { tableRows } from "#shared/words/protocol/table-rows.ts";

const change = (address: string, row: string): ReactNode => (
  <a href={rowHref(address)} aria-label={`Change ${row}`}>
    Change
  </a>
);

const changeInterval: Column<IntervalWords> = {
  head: "Draft",
  acts: true,
  cell: ({ row }) => change(addressOf("intervals", row), row),
};

/** A row that is told in several lines is changed by its first. */
const otherColumns = (rows: readonly RowWords[]): readonly Column<RowWords>[] => [
  { head: "Row", cell: ({ word }) => word },
  { head: "Says", cell: ({ says }) => says },
  {
    head: "Draft",
    acts: true,
    cell: (line) =>
      rows.find(({ address }) => address === line.address) === line && change(line.address, line.word),
  },
];

/** Every row of the draft, or of what stands where nothing is drafted, each with the way to its form; lists take one more. */
export const DraftTables = ({ protocol }: { readonly protocol: Protocol }): ReactNode => (
  <>
    <section className={styles.section}>
      <DataTable
        caption="Intervals, in days"
        columns={[...intervalColumns, changeInterval]}
        rows={protocol.intervals.map(intervalWords)}
        keyOf={({ row }) => row}
        none="The table has no interval row."
      />
    </section>
    {tableRows(protocol).map(({ head, rows }) => (
      <section key={head} className={styles.section}>
        <DataTable
          caption={head}
          columns={otherColumns(rows)}
          rows={rows}
          keyOf={({ word }) => word}
          none="The table has no such row."
        />
      </section>
    ))}
    <section className={styles.section} data-screen-only>
      <h2>Add a row</h2>
      <ul>
        {listsOfRows.map((path) => (
          <li key={path}>
            <a href={rowHref(path)}>{rowName(path)}</a>
          </li>
        ))}
      </ul>
    </section>
  </>
);
