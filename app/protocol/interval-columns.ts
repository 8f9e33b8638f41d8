import type { Column } from "#app/ui/data-table.tsx";
import type { IntervalWords } from "#shared/words/protocol/interval-rows.ts";

/** The cells of an interval, in force or drafted. */
export const intervalColumns: readonly Column<IntervalWords>[] = [
  { head: "Row", cell: ({ row }) => row },
  { head: "Asks for", cell: ({ asks }) => asks },
  { head: "Earliest", figure: true, cell: ({ earliest }) => earliest },
  { head: "Target", figure: true, cell: ({ target }) => target },
  { head: "Latest", figure: true, cell: ({ latest }) => latest },
  { head: "Hard latest", figure: true, cell: ({ hardLatest }) => hardLatest },
  { head: "Immature under", cell: ({ immature }) => immature },
  { head: "Not removed before", cell: ({ notRemoved }) => notRemoved },
  { head: "Further", cell: ({ further }) => further },
  { head: "Source", cell: ({ source }) => source },
];
