import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { printInstant } from "#shared/day/print-day.ts";
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
      <DataTable
        caption="Versions, the newest first"
        columns={[
          { head: "Version", cell: ({ version }) => version },
          { head: "Since", cell: ({ at }) => printInstant(at, zone) },
          { head: "By", cell: ({ who }) => <bdi>{who ?? "came with the clinic"}</bdi> },
          {
            head: "What changed",
            cell: ({ version, changes }) =>
              version === 1
                ? "the first calendar"
                : changes.map((change) => (
                    <p key={calendarChangeWords(change)}>{calendarChangeWords(change)}</p>
                  )),
          },
        ]}
        rows={versions}
        keyOf={({ version }) => String(version)}
        none="The clinic has no calendar."
      />
    </PageFrame>
  );
}
