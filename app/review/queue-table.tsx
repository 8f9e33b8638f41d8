import type { ReactNode } from "react";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { TubeCell } from "#app/lists/tube-cell.tsx";
import { RecentOutput, recentHead } from "#app/output/recent-output.tsx";
import type { QueueLine } from "#app/review/queue-line.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import type { Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import { printDay, printDistance } from "#shared/day/print-day.ts";
import type { QueuePart } from "#shared/review/queue-part.ts";
import { besideSentence, onlyTheNumber, verdictSentence } from "#shared/words/criterion.ts";
import { whyInShort } from "#shared/words/why-in-short.ts";
import styles from "./review.module.css";

const captions = {
  alarm: "Alarms",
  "numeric part met": "Numeric part met",
  plateau: "Plateau",
  "review due": "Review due",
  "asked for": "Asked for",
} as const satisfies Record<QueuePart, string>;

const none = {
  alarm: "No alarm is open.",
  "numeric part met": "Of no tube the numeric part is known to be met.",
  plateau: "No collection is on a plateau that nobody has reviewed.",
  "review due": "No review is due.",
  "asked for": "Nobody asked for a review that is not due yet.",
} as const satisfies Record<QueuePart, string>;

type QueueTableProps = {
  readonly part: QueuePart;
  readonly lines: readonly QueueLine[];
  readonly today: Day;
  readonly zone: Zone;
};

/** One part of the queue: whose, which tube, since when, and the criterion with its reason beside it. */
export function QueueTable({ part, lines, today, zone }: QueueTableProps): ReactNode {
  return (
    <DataTable
      caption={captions[part]}
      columns={[
        { head: "Whose", cell: ({ patient }) => <PatientCell patient={patient} /> },
        { head: "Tube", cell: ({ tube }) => <TubeCell tube={tube} /> },
        {
          head: "Due",
          cell: ({ step }) => (
            <>
              <span className={styles.unbroken}>{printDay(step.dueOn)},</span>{" "}
              <span className={styles.unbroken}>{printDistance(step.dueOn, today)}</span>
            </>
          ),
        },
        {
          head: recentHead,
          cell: ({ tube, chart }) =>
            tube !== null && chart !== null && <RecentOutput of={tube.name} facts={chart} />,
        },
        { head: "Why", cell: (line) => <WhyCell {...{ line, zone }} /> },
        {
          head: "Act",
          acts: true,
          cell: ({ tube }) =>
            tube !== null && (
              <a className={styles.unbroken} href={`/tubes/${tube.id}/review`}>
                Review the tube
              </a>
            ),
        },
      ]}
      rows={lines}
      keyOf={({ step }) => step.id}
      none={none[part]}
    />
  );
}

/** The verdict never stands without what it means. */
function WhyCell({ line, zone }: { readonly line: QueueLine; readonly zone: Zone }): ReactNode {
  const { step, criterion } = line;
  if (criterion === null || criterion.kind === "does not apply") return whyInShort(step.why);
  const plateau = criterion.beside.filter(({ code }) => code === "plateau").map(besideSentence);
  const met = criterion.kind === "numeric part met" ? [onlyTheNumber] : [];
  return [...plateau, verdictSentence(criterion, zone), ...met].join(" ");
}
