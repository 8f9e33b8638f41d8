import type { Metadata } from "next";
import type { ReactNode } from "react";
import { WeekdaysForm } from "#app/calendar/calendar-form.tsx";
import { calendarBook } from "#app/calendar/calendar-page.tsx";
import { ChangingPage } from "#app/record/changing-page.tsx";

export const metadata: Metadata = { title: "Open weekdays - Dwellbook" };

/** The days of the week on which the clinic is open. */
export default function WeekdaysPage(): ReactNode {
  return (
    <ChangingPage
      book={calendarBook}
      heading="On which days of the week is the clinic open?"
      content={async (api) => {
        const { calendar } = await api.calendar.view();
        const of = { form: "calendar.weekdays", subject: "" };
        const kept = { ...of, draft: await api.draft.load(of) };
        return <WeekdaysForm calendar={calendar} kept={kept} />;
      }}
    />
  );
}
