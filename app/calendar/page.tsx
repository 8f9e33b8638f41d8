import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/calendar/calendar.module.css";
import { entryColumns } from "#app/calendar/entry-columns.tsx";
import { LinkLine } from "#app/record/act-links.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { calendarEntries } from "#shared/day/calendar-change.ts";
import { printWeekdays } from "#shared/day/weekdays.ts";

export const metadata: Metadata = { title: "Calendar - Dwellbook" };

const keyOf = ({ kind, from }: { readonly kind: string; readonly from: string }): string => `${kind} ${from}`;

const changes = [
  { href: "/calendar/close", word: "Close the clinic" },
  { href: "/calendar/half-day", word: "Open half a day" },
  { href: "/calendar/weekdays", word: "Open weekdays" },
  { href: "/calendar/holidays", word: "Propose holidays" },
];

/** The clinic's own days: open weekdays, and what of them is closed or open for half a day. */
export default async function CalendarPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { calendar, today } = await api.calendar.view();
  const { coming, past } = calendarEntries(calendar, today);
  const columns = entryColumns({ calendar, today });
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="When is the clinic open?"
      lede={printWeekdays(calendar.openWeekdays)}
    >
      {may(person, "calendar.change") && <LinkLine label="What to change" links={changes} />}
      <div className={styles.table}>
        <DataTable
          caption="Closed days and half days to come"
          columns={may(person, "calendar.change") ? columns.withActs : columns.plain}
          rows={coming}
          keyOf={keyOf}
          none="None is planned: the clinic is open on each of its weekdays."
        />
      </div>
      {past.length > 0 && (
        <details className={styles.fold}>
          <summary>Past: {past.length}</summary>
          <DataTable
            caption="Closed days and half days that are past"
            columns={columns.plain}
            rows={past}
            keyOf={keyOf}
            none="None is past."
          />
        </details>
      )}
      <p className={styles.fold} data-screen-only>
        Version {calendar.version}. <a href="/calendar/history">Who changed the calendar, and when</a>
      </p>
    </PageFrame>
  );
}
