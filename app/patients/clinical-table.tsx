import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { ClinicalState, FoundAt } from "#shared/clinical/clinical-state.ts";
import type { FindingName } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import { printDistance, printWhen } from "#shared/day/print-day.ts";
import { known } from "#shared/tube/certainty.ts";
import { findingNames, findingPhrase } from "#shared/words/clinical.ts";

type Row = FoundAt & {
  readonly name: FindingName;
  readonly says: string;
  /** What its age counts from: of a film its own day, of everything else when it was so. */
  readonly since: Day | null;
};

/** Each item that was ever spoken of, as it was said last. */
const rowsOf = (state: ClinicalState): readonly Row[] =>
  (Object.keys(findingNames) as FindingName[]).flatMap((name) => {
    const found = state[name];
    if (found === undefined) return [];
    const film = name === "imaging" && state.imaging ? known(state.imaging.fact) : undefined;
    const since = film?.on ?? found.when.earliest;
    return [{ ...found, name, says: findingPhrase(name, found.fact, "marked"), since }];
  });

/** "2 days ago"; of an unknown date nothing is told but that. */
const distance = (since: Day | null, today: Day): string =>
  since === null ? "unknown" : printDistance(since, today);

type ClinicalTableProps = { readonly state: ClinicalState; readonly today: Day };

/** How the patient is, item by item, each with its age. */
export function ClinicalTable({ state, today }: ClinicalTableProps): ReactNode {
  const columns: readonly Column<Row>[] = [
    { head: "Clinical state", cell: ({ says }) => <bdi>{says}</bdi> },
    { head: "So on", cell: (row) => [printWhen(row.when), row.time].filter(Boolean).join(", ") },
    { head: "Age", cell: ({ since }) => distance(since, today) },
  ];
  return (
    <DataTable
      caption="Clinical state, the newest of each"
      columns={columns}
      rows={rowsOf(state)}
      keyOf={({ name }) => name}
      none="Nothing noted yet."
    />
  );
}
