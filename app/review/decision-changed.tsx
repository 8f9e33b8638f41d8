import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { Zone } from "#shared/day/instant.ts";
import { printInstant, printWhen } from "#shared/day/print-day.ts";
import type { Reading } from "#shared/output/reading.ts";
import { readingTold } from "#shared/words/evidence.ts";
import styles from "./review.module.css";

export type ReviewView = Awaited<ReturnType<SignedIn["api"]["review"]["view"]>>;
type Change = ReviewView["changes"][number];

/** The reading that is meant, as it stands now where it does. */
const meant = (change: Change): Reading => (change.change === "taken out" ? change.was : change.now);

type DecisionChangedProps = { readonly review: ReviewView; readonly zone: Zone };

/** What the last decision rested on and what stands now, side by side. Nothing where nothing changed. */
export function DecisionChanged({ review: { lastReview, changes }, zone }: DecisionChangedProps): ReactNode {
  if (lastReview === null || changes.length === 0) return null;
  const columns: readonly Column<Change>[] = [
    { head: "Emptied at", cell: (change) => printInstant(meant(change).to, zone) },
    { head: "What happened", cell: ({ change }) => change },
    {
      head: "Seen then",
      cell: (change) => (change.change === "added" ? "nothing" : readingTold(change.was)),
    },
    {
      head: "Stands now",
      cell: (change) => (change.change === "taken out" ? "nothing" : readingTold(change.now)),
    },
  ];
  return (
    <section className={styles.changed}>
      <p>
        <strong>
          The decision of {printWhen(lastReview.when)} by {lastReview.decidedBy} rested on figures that have
          changed since. Look at it again.
        </strong>{" "}
        <span data-paper-only>
          {changes.length} {changes.length === 1 ? "reading differs" : "readings differ"}; they stand side by
          side on the screen.
        </span>
      </p>
      <div data-screen-only>
        <DataTable
          caption="Seen then, and now"
          columns={columns}
          rows={changes}
          keyOf={(change) => meant(change).id}
          none=""
        />
      </div>
    </section>
  );
}
