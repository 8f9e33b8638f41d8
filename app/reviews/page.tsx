import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { RecentKey } from "#app/output/recent-output.tsx";
import { QueueTable } from "#app/review/queue-table.tsx";
import styles from "#app/review/review.module.css";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { queueParts } from "#shared/review/queue-part.ts";

export const metadata: Metadata = { title: "Reviews - Dwellbook" };

/** What waits for a physician: alarms, a numeric part that is met, a plateau, reviews that are due, those that were asked for. */
export default async function ReviewsPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { lines, today, zone } = await api.review.queue();
  return (
    <PageFrame
      frame={frame}
      heading="Which tubes wait for a decision?"
      lede="Those that waited longest first"
      here="Reviews"
    >
      <p className={styles.soft}>
        A numeric part that is met is one part of a review, never the whole of it. Whoever is not on this list
        may need a look too.
      </p>
      {queueParts.map((part) => (
        <div key={part} className={styles.part}>
          <QueueTable part={part} lines={lines.filter((line) => line.part === part)} {...{ today, zone }} />
        </div>
      ))}
      {lines.some(({ chart }) => chart !== null) && <RecentKey />}
    </PageFrame>
  );
}
