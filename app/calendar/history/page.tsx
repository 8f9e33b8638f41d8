import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { VersionsTable } from "#app/record/versions-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { calendarChangeWords } from "#shared/words/calendar.ts";

export const metadata: Metadata = { title: "Versions of the calendar - Dwellbook" };

/** Every version that the calendar has had: what it added and took away, when, and by whom. */
export default async function HistoryPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { zone, versions } = await api.calendar.history();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="Who changed the calendar, and when?"
      lede={<a href="/calendar">The calendar that stands</a>}
    >
      <VersionsTable
        versions={versions}
        zone={zone}
        words={calendarChangeWords}
        first="the first calendar"
        none="The clinic has no calendar."
      />
    </PageFrame>
  );
}
