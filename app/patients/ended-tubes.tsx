import type { ReactNode } from "react";
import { DataTable } from "#app/ui/data-table.tsx";
import { printWhen } from "#shared/day/print-day.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Tubes whose record has ended, and how. */
export function EndedTubes({ tubes }: { readonly tubes: readonly TubeState[] }): ReactNode {
  const ended = tubes.filter(({ status }) => status === "ended");
  if (ended.length === 0) return null;
  return (
    <DataTable
      caption="Ended"
      columns={[
        { head: "Tube", cell: (tube) => <a href={`/tubes/${tube.id}`}>{tubeName(tube)}</a> },
        { head: "In since", cell: ({ catheter }) => printWhen(catheter.since) },
        {
          head: "Ended",
          cell: ({ ending }) => (ending === null ? "" : `${ending.kind}, ${printWhen(ending.when)}`),
        },
      ]}
      rows={ended}
      keyOf={({ id }) => id}
      none=""
    />
  );
}
