import type { ReactNode } from "react";

/** The calendar, as a page that changes it names it. */
export const calendarBook = {
  href: "/calendar",
  word: "All of the calendar",
  asks: "calendar.change",
} as const;

/** Said where an address names a closure or a half day that stands no longer. */
export function NoLongerThere(): ReactNode {
  return (
    <p>
      This no longer stands in the calendar. <a href="/calendar">To the calendar</a>
    </p>
  );
}
