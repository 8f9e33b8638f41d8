import type { ReactNode } from "react";
import { type RowOf, rowsThat, type ShelfPreview } from "#app/shelf/shelf-preview.ts";
import { typeColumns } from "#app/shelf/shelf-table.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import styles from "./shelf.module.css";

type PreviewProps = { readonly preview: ShelfPreview };

const rowColumn = { head: "Row", cell: ({ row }: { readonly row: number }): ReactNode => row };
const keyOf = ({ row }: { readonly row: number }): string => String(row);

type Worded = RowOf<"new"> | RowOf<"here already"> | RowOf<"changes">;
const nameColumn = { head: "Name", cell: ({ words }: Worded): ReactNode => <bdi>{words.name}</bdi> };

function Differences({ differences }: RowOf<"changes">): ReactNode {
  return (
    <ul className={styles.reasons}>
      {differences.map(({ label, was, now }) => (
        <li key={label}>
          {label}: <bdi>{was}</bdi> becomes <bdi>{now}</bdi>
        </li>
      ))}
    </ul>
  );
}

function Aside({ preview }: PreviewProps): ReactNode {
  return (
    <DataTable
      caption="Set aside"
      columns={[
        rowColumn,
        {
          head: "Says",
          cell: ({ cells }) => (
            <bdi className={styles.cells}>{cells.filter((cell) => cell.trim() !== "").join(" · ")}</bdi>
          ),
        },
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
      ]}
      rows={rowsThat(preview, "set aside")}
      keyOf={keyOf}
      none="No row is set aside."
    />
  );
}

/** Every row of a sheet, as it will stand. */
export function PreviewTables({ preview }: PreviewProps): ReactNode {
  const changes = rowsThat(preview, "changes");
  const here = rowsThat(preview, "here already");
  const cells = typeColumns.map((column) => ({ ...column, cell: ({ words }: Worded) => column.cell(words) }));
  return (
    <div className={styles.tables}>
      <Aside preview={preview} />
      {changes.length > 0 && (
        <DataTable
          caption="On the shelf already, said otherwise"
          columns={[rowColumn, nameColumn, { head: "What changes", cell: Differences }]}
          rows={changes}
          keyOf={keyOf}
          none=""
        />
      )}
      <DataTable
        caption="New on the shelf"
        columns={[rowColumn, nameColumn, ...cells]}
        rows={rowsThat(preview, "new")}
        keyOf={keyOf}
        none="No row is new."
      />
      {here.length > 0 && (
        <DataTable
          caption="On the shelf as they are"
          columns={[rowColumn, nameColumn]}
          rows={here}
          keyOf={keyOf}
          none=""
        />
      )}
    </div>
  );
}
