import type { Metadata } from "next";
import type { ReactNode } from "react";
import { ClosingForm } from "#app/calendar/calendar-form.tsx";
import { calendarBook, NoLongerThere } from "#app/calendar/calendar-page.tsx";
import type { Query } from "#app/lists/filter-address.ts";
import { ChangingPage } from "#app/record/changing-page.tsx";

export const metadata: Metadata = { title: "Close the clinic - Dwellbook" };

type ClosePageProps = { readonly searchParams: Promise<Query> };

/** Close the clinic for a day or several; `?moves=` names the closure to move by its first day. */
export default async function ClosePage({ searchParams }: ClosePageProps): Promise<ReactNode> {
  const { moves: from } = await searchParams;
  return (
    <ChangingPage
      book={calendarBook}
      heading={from === undefined ? "When is the clinic closed?" : "To when is the closure moved?"}
      content={async (api) => {
        const { today, calendar } = await api.calendar.view();
        const moves = calendar.closures.find((closure) => closure.from === from) ?? null;
        if (from !== undefined && moves === null) return <NoLongerThere />;
        const of = { form: "calendar.close", subject: moves?.from ?? "" };
        const kept = { ...of, draft: await api.draft.load(of) };
        return <ClosingForm today={today} calendar={calendar} moves={moves} kept={kept} />;
      }}
    />
  );
}
