import type { ReactNode } from "react";
import { rowHref } from "#app/protocol/draft/row-href.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import type { RowDifference } from "#shared/words/protocol/changes.ts";

type DifferencesProps = { readonly version: number; readonly differences: readonly RowDifference[] };

/** What a draft tells otherwise than the version that stands, row by row. */
export const DifferencesTable = ({ version, differences }: DifferencesProps): ReactNode => (
  <DataTable
    caption={`What differs from version ${version}`}
    columns={[
      { head: "Row", cell: ({ row }) => row },
      { head: "Table", cell: ({ head }) => head },
      { head: "Stands", cell: ({ stood }) => stood ?? "not there" },
      { head: "Drafted", cell: ({ drafted }) => drafted ?? "dropped" },
      {
        head: "Draft",
        acts: true,
        cell: ({ row, address }) =>
          address !== null && (
            <a href={rowHref(address)} aria-label={`Change ${row}`}>
              Change
            </a>
          ),
      },
    ]}
    rows={differences}
    keyOf={({ head, row, stood, drafted }) => `${head} ${row} ${stood} ${drafted}`}
    none={`The draft has the same rows as version ${version}.`}
  />
);
