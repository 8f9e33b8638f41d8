import type { ReactNode } from "react";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { keyOfRow, rowColumn, SetAside, saysColumn } from "#app/ui/set-aside.tsx";
import { type HospitalPreview, type RowOf, rowsThat } from "#app/visits/hospital-list/hospital-preview.ts";

type PreviewProps = { readonly preview: HospitalPreview };

type Matched = RowOf<"books" | "moves" | "known">;

const whose = {
  head: "Whose",
  cell: ({ patient }: Matched | RowOf<"asks">): ReactNode => <PatientCell patient={patient} />,
};
const what = { head: "What becomes of it", cell: ({ sentence }: Matched): ReactNode => sentence };

type AskedProps = PreviewProps & {
  readonly choices: Readonly<Record<string, string>>;
  readonly choose: (row: number, choice: string) => void;
};

/** Rows that say too little: whoever knows the tube chooses it, and nothing is guessed. */
export function AskedTable({ preview, choices, choose }: AskedProps): ReactNode {
  const rows = rowsThat(preview, "asks");
  if (rows.length === 0) return null;
  return (
    <DataTable
      caption="Which tube, and what is done"
      columns={[
        rowColumn,
        whose,
        saysColumn,
        {
          head: "Choose",
          cell: ({ row, options }) => (
            <select
              aria-label={`Tube and act of row ${row}`}
              value={choices[row] ?? ""}
              onChange={(event) => choose(row, event.target.value)}
            >
              <option value="">Leave this row out</option>
              {options.map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          ),
        },
      ]}
      rows={rows}
      keyOf={keyOfRow}
      none=""
    />
  );
}

function Matched({
  preview,
  stands,
  caption,
}: PreviewProps & { stands: Matched["stands"]; caption: string }) {
  const rows: readonly Matched[] = rowsThat(preview, stands);
  if (rows.length === 0) return null;
  return (
    <DataTable caption={caption} columns={[rowColumn, whose, what]} rows={rows} keyOf={keyOfRow} none="" />
  );
}

function SaidAbove({ preview }: PreviewProps): ReactNode {
  const rows = rowsThat(preview, "said above");
  if (rows.length === 0) return null;
  return (
    <DataTable
      caption="In the list twice"
      columns={[
        rowColumn,
        { head: "What becomes of it", cell: ({ above }) => `Row ${above} says the same.` },
      ]}
      rows={rows}
      keyOf={keyOfRow}
      none=""
    />
  );
}

/** Every row that is not asked about, as it will stand. */
export function PreviewTables({ preview }: PreviewProps): ReactNode {
  return (
    <>
      <SetAside rows={rowsThat(preview, "set aside")} />
      <Matched preview={preview} stands="moves" caption="Moves a booking" />
      <Matched preview={preview} stands="books" caption="Will be booked elsewhere" />
      <Matched preview={preview} stands="known" caption="Known already" />
      <SaidAbove preview={preview} />
    </>
  );
}
