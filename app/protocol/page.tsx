import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { intervalColumns } from "#app/protocol/interval-columns.ts";
import styles from "#app/protocol/protocol.module.css";
import { DataTable } from "#app/ui/data-table.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { calendarEntries } from "#shared/day/calendar-change.ts";
import { printDay } from "#shared/day/print-day.ts";
import { printWeekdays } from "#shared/day/weekdays.ts";
import { sources } from "#shared/protocol/sources.ts";
import { entryWords } from "#shared/words/calendar.ts";
import { intervalWords } from "#shared/words/protocol/interval-rows.ts";
import { otherRows } from "#shared/words/protocol/other-rows.ts";

export const metadata: Metadata = { title: "Protocol - Dwellbook" };

/** The table that dates come from, as it is in force; each row with its source. */
export default async function ProtocolPage(): Promise<ReactNode> {
  const { api, frame, person, today } = await signedIn();
  const { protocol, calendar } = await api.protocol.view();
  const { version, approved, intervals } = protocol;
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="Which rows are in force?"
      lede={`Version ${version}`}
    >
      <p className={styles.approval}>
        {approved === null ? (
          <>
            <ExampleMark /> Nobody has approved this table. Its rows are examples for adults, which the clinic
            replaces by its own, approves and dates before use. Under 18 no row applies: ask.
          </>
        ) : (
          `Approved by ${approved.by} on ${printDay(approved.on)}. For adults; under 18 no row applies: ask.`
        )}
      </p>
      <p className={styles.links} data-screen-only>
        {may(person, "protocol.draft") && <a href="/protocol/draft">Draft a change</a>}
        <a href="/protocol/history">Versions of the table</a>
      </p>
      <DataTable
        caption="Intervals, in days"
        columns={intervalColumns}
        rows={intervals.map(intervalWords)}
        keyOf={({ row }) => row}
        none="The table has no interval row."
      />
      {otherRows(protocol).map(({ head, rows }) => (
        <section key={head} className={styles.section}>
          <DataTable
            caption={head}
            columns={[
              { head: "Row", cell: ({ word }) => word },
              { head: "Says", cell: ({ says }) => says },
            ]}
            rows={rows}
            keyOf={({ word }) => word}
            none="The table has no such row."
          />
        </section>
      ))}
      <section className={styles.section}>
        <h2>Open days</h2>
        <p>
          {printWeekdays(calendar.openWeekdays)}. Version {calendar.version} of the{" "}
          <a href="/calendar">calendar</a>.
        </p>
        <ul>
          {calendarEntries(calendar, today).coming.map((entry) => {
            const { when, what, reason } = entryWords(entry, calendar);
            return (
              <li key={`${entry.kind} ${when}`}>
                {when}, {what}: {reason}
              </li>
            );
          })}
        </ul>
      </section>
      <section className={styles.section}>
        <h2>Sources</h2>
        <dl className={styles.sources}>
          {Object.entries(sources).map(([name, source]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{source}</dd>
            </div>
          ))}
        </dl>
      </section>
    </PageFrame>
  );
}
