import type { ReactNode } from "react";
import { DataTable } from "#app/ui/data-table.tsx";
import type { Instant, Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";

type VersionsTableProps<Change> = {
  readonly versions: readonly {
    readonly version: number;
    readonly at: Instant;
    /** Null of one that came with the clinic. */
    readonly who: string | null;
    readonly changes: readonly Change[];
  }[];
  readonly zone: Zone;
  /** One change as a sentence. */
  readonly words: (change: Change) => string;
  /** Said of a version that is told without changes: the first. */
  readonly first: string;
  readonly none: string;
};

/** Every version of one of the clinic's books: what it changed, when, and by whom. */
export function VersionsTable<Change>(props: VersionsTableProps<Change>): ReactNode {
  const { versions, zone, words, first, none } = props;
  return (
    <DataTable
      caption="Versions, the newest first"
      columns={[
        { head: "Version", cell: ({ version }) => version },
        { head: "Since", cell: ({ at }) => printInstant(at, zone) },
        { head: "By", cell: ({ who }) => <bdi>{who ?? "came with the clinic"}</bdi> },
        {
          head: "What changed",
          cell: ({ changes }) =>
            changes.length === 0
              ? first
              : changes.map(words).map((sentence) => <p key={sentence}>{sentence}</p>),
        },
      ]}
      rows={versions}
      keyOf={({ version }) => String(version)}
      none={none}
    />
  );
}
