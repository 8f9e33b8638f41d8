import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { RecentKey } from "#app/output/recent-output.tsx";
import { QueueTable } from "#app/review/queue-table.tsx";
import styles from "#app/review/review.module.css";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { queueParts } from "#shared/review/queue-part.ts";

export const metadata: Metadata = { title: "Reviews - Dwellbook" };

type ReviewsPageProps = { readonly searchParams: Promise<Query> };

/** What waits for a physician: alarms, a numeric part that is met, a plateau, reviews that are due, those that were asked for. */
export default async function ReviewsPage({ searchParams }: ReviewsPageProps): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const page = pageInQuery(await searchParams);
  const { lines, today, zone, hasNext } = await api.review.queue({ page });
  // On one page of several an empty part would say that none is open.
  const isWhole = page === 1 && !hasNext;
  const parts = queueParts.filter((part) => isWhole || lines.some((line) => line.part === part));
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
      {parts.map((part) => (
        <div key={part} className={styles.part}>
          <QueueTable part={part} lines={lines.filter((line) => line.part === part)} {...{ today, zone }} />
        </div>
      ))}
      {lines.some(({ chart }) => chart !== null) && <RecentKey />}
      <Pages page={page} hasNext={hasNext} hrefOf={(to) => `/reviews?page=${to}`} of="the queue" />
    </PageFrame>
  );
}
