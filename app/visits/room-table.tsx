import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { type Choosing, freeTimeHref } from "#app/visits/choosing.ts";
import { type VisitLine, visitColumns } from "#app/visits/visit-columns.tsx";
import type { Day } from "#shared/day/day.ts";
import type { Span } from "#shared/visit/room.ts";
import { roomDayWords, spanWords } from "#shared/words/visit-day.ts";
import styles from "./visits.module.css";

export type DaysView = Awaited<ReturnType<SignedIn["api"]["visit"]["days"]>>;
export type DayView = DaysView["days"][number];
type RoomDay = DayView["rooms"][number];

/** A visit, or a time that is free: the rows of a room's day. */
type Row = { readonly from: number } & ({ readonly line: VisitLine } | { readonly free: Span });

const rowsOf = ({ visits, free }: RoomDay): readonly Row[] =>
  [
    ...visits.map((line): Row => ({ from: line.visit.place.from ?? 0, line })),
    ...free.map((span): Row => ({ from: span.from, free: span })),
  ].toSorted((a, b) => a.from - b.from);

type RoomTableProps = {
  readonly of: RoomDay;
  readonly on: Day;
  readonly today: Day;
  readonly choosing: Choosing | null;
};

/** One room's day in order of time, what is free among what is booked. */
export function RoomTable({ of, on, today, choosing }: RoomTableProps): ReactNode {
  const { room } = of;
  const freeTime = ({ from, to }: Span): ReactNode => (
    <a className={styles.free} data-stop href={freeTimeHref({ on, from, room: room.name }, choosing)}>
      free {spanWords({ from, to })}
    </a>
  );
  const [time, ...others] = visitColumns(today);
  return (
    <section className={styles.room} id={`room-${room.id}`}>
      <DataTable<Row>
        caption={room.name}
        count={roomDayWords(of, on < today)}
        columns={[
          { head: time.head, cell: (row) => ("free" in row ? freeTime(row.free) : time.cell(row.line)) },
          {
            head: "Minutes",
            figure: true,
            cell: (row) => ("free" in row ? row.free.to - row.free.from : minutesOf(row.line)),
          },
          ...others.map((column) => ({
            ...column,
            cell: (row: Row) => ("free" in row ? null : column.cell(row.line)),
          })),
        ]}
        rows={rowsOf(of)}
        keyOf={(row) => ("free" in row ? `free ${row.from}` : row.line.visit.id)}
        none={noneWords(of, on < today)}
      />
    </section>
  );
}

const minutesOf = ({ visit: { place } }: VisitLine): number | null =>
  place.kind === "here" ? place.minutes : null;

function noneWords(of: RoomDay, isPast: boolean): string {
  if (of.spans.length === 0) return "Not staffed on this day.";
  return isPast ? "Nobody came." : "Nobody comes, and no time of it is left.";
}
