import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { Choosing } from "#app/visits/choosing.ts";
import { dayHref } from "#app/visits/day-nav.tsx";
import type { DayView } from "#app/visits/room-table.tsx";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { minutesOf } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";
import { countWords, halfDayWords } from "#shared/words/visit-day.ts";
import styles from "./visits.module.css";

type WeekTableProps = {
  readonly days: readonly DayView[];
  readonly today: Day;
  readonly choosing: Choosing | null;
};

type Lines = DayView["others"];

/** How many come and when; which of them are urgent or unsettled is told by number. */
function Visits({ lines }: { readonly lines: Lines }): ReactNode {
  const urgent = lines.filter(({ visit }) => visit.urgent).length;
  const open = lines.filter(({ toSettle }) => toSettle.things.length > 0).length;
  const against = lines.filter((line) => line.against.length > 0).length;
  const told = [
    urgent > 0 && `${urgent} urgent`,
    open > 0 && `${open} not settled`,
    against > 0 && `${against} could not be booked there now`,
  ].filter((one) => one !== false);
  const times = lines.map(({ visit: { place } }) =>
    place.from === null ? "time not known" : printMinute(place.from),
  );
  return (
    <>
      {lines.length > 0 && <span className={styles.times}>{times.join(", ")}</span>}
      {told.length > 0 && <strong className={styles.times}>{told.join(", ")}</strong>}
    </>
  );
}

/** One room on one day, which leads to that room of that day. Nothing where nobody staffs it and nobody comes. */
function Cell({ of, href, isPast }: { of: DayView["rooms"][number]; href: string; isPast: boolean }) {
  const { visits, spans, free, room } = of;
  if (visits.length === 0 && spans.length === 0) return null;
  return (
    <>
      <a data-stop href={`${href}#room-${room.id}`}>
        {countWords(visits.length)}
      </a>
      <Visits lines={visits} />
      {!isPast && spans.length > 0 && <span className={styles.times}>{minutesOf(free)} min free</span>}
    </>
  );
}

/** The days of a week as rows, today among them by its word; a closed one says why. */
export function WeekTable({ days, today, choosing }: WeekTableProps): ReactNode {
  const rooms = days[0]?.rooms.map(({ room }) => room) ?? [];
  const columns: readonly Column<DayView>[] = [
    {
      head: "Day",
      cell: ({ on, shut, half }) => (
        <>
          <a
            data-stop
            className={styles.time}
            href={dayHref(on, choosing)}
            aria-current={on === today ? "date" : undefined}
          >
            {printDay(on)}
          </a>
          {on === today && <span className={styles.here}> today</span>}
          {shut !== null && <span className={styles.times}>closed: {shut}</span>}
          {half !== null && <span className={styles.times}>{halfDayWords(half)}</span>}
        </>
      ),
    },
    ...rooms.map(
      (room, place): Column<DayView> => ({
        head: room.name,
        cell: ({ rooms: ofDay, on }) => {
          const of = ofDay[place];
          return of && <Cell of={of} href={dayHref(on, choosing)} isPast={on < today} />;
        },
      }),
    ),
    {
      head: "Elsewhere",
      cell: ({ others }) =>
        others.length === 0 ? null : (
          <>
            {countWords(others.length)}
            <Visits lines={others} />
          </>
        ),
    },
  ];
  const all = days.flatMap(({ rooms: ofDay, others }) => [
    ...ofDay.flatMap(({ visits }) => visits),
    ...others,
  ]);
  return (
    <DataTable
      caption="Days of the week"
      count={countWords(all.length)}
      columns={columns}
      rows={days}
      keyOf={({ on }) => on}
      none=""
    />
  );
}
