import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { dayAsked } from "#app/visits/day-asked.ts";
import { DaySheet } from "#app/visits/day-sheet.tsx";
import { printDay } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Day sheet - Dwellbook" };

type SheetPageProps = { readonly searchParams: Promise<Query> };

/** A day room by room, large enough to write on: a page to print. */
export default async function SheetPage({ searchParams }: SheetPageProps): Promise<ReactNode> {
  const { api, frame, today } = await signedIn();
  const { on, problem } = dayAsked(await searchParams, today);
  const sheet = await api.visit.sheet({ on });
  return (
    <PageFrame
      frame={frame}
      heading={`Day sheet, ${printDay(on)}`}
      lede={
        <a href={`/visits?on=${on}`} data-screen-only>
          This day on the screen
        </a>
      }
      here="Visits"
      paper="wide"
    >
      {problem !== null && <p role="alert">{problem} Today stands below.</p>}
      {sheet.isExample && (
        <p>
          <ExampleMark /> What is to be settled before a visit is by rows that nobody in the clinic has
          approved yet.
        </p>
      )}
      <DaySheet sheet={sheet} />
    </PageFrame>
  );
}
