import type { Metadata } from "next";
import type { ReactNode } from "react";
import { calendarBook, NoLongerThere } from "#app/calendar/calendar-page.tsx";
import { TakeAway } from "#app/calendar/take-away.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { ChangingPage } from "#app/record/changing-page.tsx";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { CalendarAsked } from "#shared/record/calendar/asked.ts";

export const metadata: Metadata = { title: "Take away from the calendar - Dwellbook" };

type TakeAwayPageProps = { readonly searchParams: Promise<Query> };

/** What an address names: `?closure=` by its first day, `?half=` by its day. */
function namedIn({ closures, halfDays = [] }: ClinicCalendar, query: Query): CalendarAsked | null {
  const closure = closures.find(({ from }) => from === query.closure);
  if (closure !== undefined) return { kind: "take a closure away", from: closure.from };
  const half = halfDays.find(({ on }) => on === query.half);
  return half === undefined ? null : { kind: "take a half day away", on: half.on };
}

/** Take a closure or a half day out of the calendar, after a look at whom it touches. */
export default async function TakeAwayPage({ searchParams }: TakeAwayPageProps): Promise<ReactNode> {
  const query = await searchParams;
  return (
    <ChangingPage
      book={calendarBook}
      heading="Is this taken out of the calendar?"
      content={async (api) => {
        const { calendar } = await api.calendar.view();
        const asked = namedIn(calendar, query);
        if (asked === null) return <NoLongerThere />;
        const { version: seen } = calendar;
        const preview = await api.calendar.preview({ seen, asked, page: 1 });
        return <TakeAway seen={seen} asked={asked} preview={preview} />;
      }}
    />
  );
}
