import type { ReactNode } from "react";
import styles from "#app/calendar/calendar.module.css";
import type { Column } from "#app/ui/data-table.tsx";
import { Soft } from "#app/ui/soft.tsx";
import type { CalendarEntry } from "#shared/day/calendar-change.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { printDistance } from "#shared/day/print-day.ts";
import { entryWords } from "#shared/words/calendar.ts";

type Beside = { readonly calendar: ClinicCalendar; readonly today: Day };

/** The columns of the calendar, and the same with what may be done to each. */
export function entryColumns({ calendar, today }: Beside): {
  readonly plain: readonly Column<CalendarEntry>[];
  readonly withActs: readonly Column<CalendarEntry>[];
} {
  const plain: readonly Column<CalendarEntry>[] = [
    { head: "When", cell: (entry) => <When entry={entry} today={today} /> },
    { head: "How long", cell: (entry) => entryWords(entry, calendar).long },
    { head: "What", cell: (entry) => entryWords(entry, calendar).what },
    { head: "Why", cell: (entry) => <bdi>{entryWords(entry, calendar).reason}</bdi> },
  ];
  return { plain, withActs: [...plain, { head: "Change", acts: true, cell: acts }] };
}

function When({ entry, today }: { readonly entry: CalendarEntry; readonly today: Day }): ReactNode {
  const distance = entry.from < today && entry.to >= today ? "now" : printDistance(entry.from, today);
  return (
    <>
      {entryWords(entry).when} <Soft>{distance}</Soft>
    </>
  );
}

function acts(entry: CalendarEntry): ReactNode {
  const { when } = entryWords(entry);
  const [moves, named] = entry.kind === "closed" ? ["close", "closure"] : ["half-day", "half"];
  return (
    <span className={styles.acts}>
      <a href={`/calendar/${moves}?moves=${entry.from}`} aria-label={`Move ${when}`}>
        Move
      </a>
      <a href={`/calendar/take-away?${named}=${entry.from}`} aria-label={`Take away ${when}`}>
        Take away
      </a>
    </span>
  );
}
