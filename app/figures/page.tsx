import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { daysAsked } from "#app/figures/days-asked.ts";
import styles from "#app/figures/figures.module.css";
import { FiguresTable } from "#app/figures/figures-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { figureSpans } from "#shared/call/figures.ts";
import { printDay } from "#shared/day/print-day.ts";
import { figureLines, tableCount } from "#shared/words/figures.ts";

export const metadata: Metadata = { title: "Figures - Dwellbook" };

type FiguresPageProps = { readonly searchParams: Promise<{ readonly days?: string }> };

const tables = ["In place", "Reached", "Red flags", "Records ended"] as const;

/** What the lead asks of the last days, as counts of the clinic's own entries. */
export default async function FiguresPage({ searchParams }: FiguresPageProps): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const days = daysAsked((await searchParams).days);
  const view = await api.figure.view({ days });
  const lines = figureLines(view);
  return (
    <PageFrame
      frame={frame}
      heading="Who is followed, reached and lost?"
      lede={`${printDay(view.span.from)} to ${printDay(view.span.to)}`}
      here="Clinic's books"
    >
      <p className={styles.spans} data-screen-only>
        {figureSpans.map((span) => (
          <a key={span} href={`/figures?days=${span}`} aria-current={span === days ? "page" : undefined}>
            last {span} days
          </a>
        ))}
        <a href={`/api/figures?days=${days}`}>as a file (CSV)</a>
      </p>
      <p>
        What is in place and what is open is counted as it stands today; what is over, by its day. Published:
        after four attempts 27 to 32 of 100 patients were not reached (Academic Emergency Medicine 2013).
      </p>
      <div className={styles.parts}>
        {tables.map((table) => (
          <FiguresTable
            key={table}
            caption={table}
            count={tableCount(table, view)}
            lines={lines.filter((line) => line.table === table)}
            days={days}
          />
        ))}
      </div>
    </PageFrame>
  );
}
