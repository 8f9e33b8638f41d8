import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { visitHref } from "#app/visit/visit-pages.ts";

type Lost = {
  readonly visitId: string;
  readonly patientId: string;
  readonly whose: string;
  readonly slot: string;
  readonly says: string;
};

const columns: readonly Column<Lost>[] = [
  { head: "Whose", cell: ({ whose }) => <bdi>{whose}</bdi> },
  {
    head: "Visit",
    cell: ({ patientId, visitId, slot }) => <a href={visitHref(patientId, visitId)}>{slot}</a>,
  },
  { head: "Why it cannot stay", cell: ({ says }) => says },
];

/** Booked visits that a change leaves where none can be booked any more. They stand until somebody moves them. */
export function LostSlots({ lost }: { readonly lost: readonly Lost[] }): ReactNode {
  if (lost.length === 0) return null;
  return (
    <DataTable
      caption="Booked visits that cannot stay: they stand until somebody moves them"
      columns={columns}
      rows={lost}
      keyOf={({ visitId }) => visitId}
      none=""
    />
  );
}
