import type { ReactNode } from "react";
import { type RowOf, rowsThat, type ShelfPreview } from "#app/shelf/shelf-preview.ts";
import { typeColumns } from "#app/shelf/shelf-table.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { keyOfRow, rowColumn, SetAside } from "#app/ui/set-aside.tsx";
import styles from "./shelf.module.css";

type PreviewProps = { readonly preview: ShelfPreview };

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

/** Every row of a sheet, as it will stand. */
export function PreviewTables({ preview }: PreviewProps): ReactNode {
  const changes = rowsThat(preview, "changes");
  const here = rowsThat(preview, "here already");
  const cells = typeColumns.map((column) => ({ ...column, cell: ({ words }: Worded) => column.cell(words) }));
  return (
    <div className={styles.tables}>
      <SetAside rows={rowsThat(preview, "set aside")} />
      {changes.length > 0 && (
        <DataTable
          caption="On the shelf already, said otherwise"
          columns={[rowColumn, nameColumn, { head: "What changes", cell: Differences }]}
          rows={changes}
          keyOf={keyOfRow}
          none=""
        />
      )}
      <DataTable
        caption="New on the shelf"
        columns={[rowColumn, nameColumn, ...cells]}
        rows={rowsThat(preview, "new")}
        keyOf={keyOfRow}
        none="No row is new."
      />
      {here.length > 0 && (
        <DataTable
          caption="On the shelf as they are"
          columns={[rowColumn, nameColumn]}
          rows={here}
          keyOf={keyOfRow}
          none=""
        />
      )}
    </div>
  );
}
