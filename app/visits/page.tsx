import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { LinkLine } from "#app/record/act-links.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { type Choosing, choosingIn } from "#app/visits/choosing.ts";
import { dayAsked } from "#app/visits/day-asked.ts";
import { DayNav } from "#app/visits/day-nav.tsx";
import { forWhom } from "#app/visits/for-whom.tsx";
import { type DayView, RoomTable } from "#app/visits/room-table.tsx";
import { visitColumns } from "#app/visits/visit-columns.tsx";
import { may } from "#shared/access/may.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay, printDistance } from "#shared/day/print-day.ts";
import { halfDayWords } from "#shared/words/visit-day.ts";
import styles from "./visits.module.css";

export const metadata: Metadata = { title: "Visits - Dwellbook" };

type VisitsPageProps = { readonly searchParams: Promise<Query> };

/** Who comes on one day, room by room, and what of it is free. */
export default async function VisitsPage({ searchParams }: VisitsPageProps): Promise<ReactNode> {
  const { api, frame, person, today } = await signedIn();
  const query = await searchParams;
  const asked = dayAsked(query, today);
  const choosing = choosingIn(query);
  const whom = await forWhom(api, choosing);
  const { days, isAnyToCome } = await api.visit.days({ from: asked.on, days: 1 });
  const [day] = days;
  const links = [
    { href: `/visits/sheet?on=${asked.on}`, word: "Day sheet to print" },
    ...(isAnyToCome ? [{ href: "/api/visits", word: "Calendar file of all visits from today on" }] : []),
    ...(may(person, "visit.hospitalBrought")
      ? [{ href: "/visits/hospital-list", word: "Bring in the hospital's bookings" }]
      : []),
  ];
  return (
    <PageFrame
      frame={frame}
      heading={`Who comes on ${printDay(asked.on)}?`}
      lede={printDistance(asked.on, today)}
      here="Visits"
      {...(whom === null ? {} : { identity: whom.identity })}
    >
      {whom !== null && <p>{whom.says}</p>}
      <DayNav path="/visits" {...{ asked, today, choosing }} />
      <LinkLine label="To print, to take away and to bring in" links={links} />
      {day !== undefined && <OfDay {...{ day, today, choosing }} />}
    </PageFrame>
  );
}

type OfDayProps = { readonly day: DayView; readonly today: Day; readonly choosing: Choosing | null };

function OfDay({ day, today, choosing }: OfDayProps): ReactNode {
  const { on, shut, half, others, gone } = day;
  // A room that nobody staffs and where nobody comes has nothing to show.
  const rooms = day.rooms.filter(({ spans, visits }) => spans.length > 0 || visits.length > 0);
  const idle = day.rooms.filter((one) => !rooms.includes(one));
  const columns = visitColumns(today);
  return (
    <>
      {shut !== null && <p className={styles.shut}>The clinic is closed: {shut}.</p>}
      {half !== null && <p className={styles.shut}>{halfDayWords(half)}</p>}
      {day.rooms.length === 0 && (
        <p className={styles.shut}>
          The clinic has no room: nothing can be booked. <a href="/rooms">To the rooms</a>
        </p>
      )}
      {rooms.map((of) => (
        <RoomTable key={of.room.id} {...{ of, on, today, choosing }} />
      ))}
      {shut === null && idle.length > 0 && (
        <p className={styles.elsewhere}>
          Not staffed on this day: {idle.map(({ room }) => room.name).join(", ")}.
        </p>
      )}
      {others.length > 0 && (
        <div className={styles.elsewhere}>
          <DataTable
            caption="Elsewhere"
            columns={[
              columns[0],
              {
                head: "Where",
                cell: ({ visit: { place } }) =>
                  place.kind === "elsewhere" ? <bdi>{place.where}</bdi> : "a room that is no longer there",
              },
              ...columns.slice(1),
            ]}
            rows={others}
            keyOf={({ visit }) => visit.id}
            none=""
          />
        </div>
      )}
      {gone.length > 0 && (
        <details className={styles.fold}>
          <summary>Cancelled or not attended: {gone.length}</summary>
          <DataTable
            caption="Cancelled or not attended"
            columns={columns}
            rows={gone}
            keyOf={({ visit }) => visit.id}
            none=""
          />
        </details>
      )}
    </>
  );
}
