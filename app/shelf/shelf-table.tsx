import type { ReactNode } from "react";
import { DataTable } from "#app/ui/data-table.tsx";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { type TypeWords, typeWords } from "#shared/words/shelf-type.ts";
import styles from "./shelf.module.css";

type Row = TypeWords & { readonly id: string };

/** What a cell says, quietly where nobody knows, and nothing where its sort has none. */
function said(words: string): ReactNode {
  if (words === "") return null;
  return words === "unknown" ? <span className={styles.soft}>{words}</span> : <bdi>{words}</bdi>;
}

type Column = { readonly head: string; readonly of: keyof TypeWords; readonly figure?: boolean };

const columns: readonly Column[] = [
  { head: "Sort", of: "sort" },
  { head: "Outside", of: "outside", figure: true },
  { head: "Takes", of: "takes" },
  { head: "Insides", of: "insides" },
  { head: "Length", of: "length", figure: true },
  { head: "End hole", of: "endHole" },
  { head: "Held by", of: "retention" },
  { head: "For", of: "kinds" },
  { head: "Known", of: "known" },
];

/** The same columns wherever types are shown. */
export const typeColumns = columns.map(({ head, of, figure = false }) => ({
  head,
  figure,
  cell: (row: TypeWords): ReactNode => said(row[of]),
}));

type ShelfTableProps = {
  readonly caption: string;
  readonly types: readonly ShelfType[];
  readonly mayChange: boolean;
  readonly none: string;
};

/** Types as rows; a name leads to its form where this person may change it. */
export function ShelfTable({ caption, types, mayChange, none }: ShelfTableProps): ReactNode {
  const rows = types.map((type): Row => ({ id: type.id, ...typeWords(type) }));
  const name = {
    head: "Name",
    cell: ({ id, name: called }: Row): ReactNode =>
      mayChange ? (
        <a href={`/shelf/${id}`}>
          <bdi>{called}</bdi>
        </a>
      ) : (
        <bdi>{called}</bdi>
      ),
  };
  return (
    <DataTable
      caption={caption}
      columns={[name, ...typeColumns]}
      rows={rows}
      keyOf={({ id }) => id}
      none={none}
    />
  );
}
