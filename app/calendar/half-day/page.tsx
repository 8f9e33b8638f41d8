import type { Metadata } from "next";
import type { ReactNode } from "react";
import { HalfDayForm } from "#app/calendar/calendar-form.tsx";
import { calendarBook, NoLongerThere } from "#app/calendar/calendar-page.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { ChangingPage } from "#app/record/changing-page.tsx";

export const metadata: Metadata = { title: "Open half a day - Dwellbook" };

type HalfDayPageProps = { readonly searchParams: Promise<Query> };

/** Open the clinic for half a day; `?moves=` names the half day to move by its day. */
export default async function HalfDayPage({ searchParams }: HalfDayPageProps): Promise<ReactNode> {
  const { moves: on } = await searchParams;
  return (
    <ChangingPage
      book={calendarBook}
      heading={on === undefined ? "On which day is half a day open?" : "To when is the half day moved?"}
      content={async (api) => {
        const { today, calendar } = await api.calendar.view();
        const moves = calendar.halfDays?.find((half) => half.on === on) ?? null;
        if (on !== undefined && moves === null) return <NoLongerThere />;
        const of = { form: "calendar.half-day", subject: moves?.on ?? "" };
        const kept = { ...of, draft: await api.draft.load(of) };
        return <HalfDayForm today={today} calendar={calendar} moves={moves} kept={kept} />;
      }}
    />
  );
}
