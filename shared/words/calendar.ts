import { type CalendarChange, type CalendarEntry, daysClosed } from "#shared/day/calendar-change.ts";
import type { Closure, DayHalf, HalfDay } from "#shared/day/clinic-days.ts";
import { printDay } from "#shared/day/print-day.ts";
import { printWeekdays } from "#shared/day/weekdays.ts";

const daysWords = (days: number): string => `${days} ${days === 1 ? "day" : "days"}`;

/** `Mon 21 Dec 2026 to Fri 1 Jan 2027`, or the one day. */
export const spanWords = ({ from, to }: Pick<Closure, "from" | "to">): string =>
  from === to ? printDay(from) : `${printDay(from)} to ${printDay(to)}`;

const halfWords: Readonly<Record<DayHalf, string>> = {
  morning: "open until noon",
  afternoon: "open from noon on",
};

const closureWords = (closure: Closure): string => `${spanWords(closure)}: ${closure.reason}`;

const halfDayWords = ({ on, open, reason }: HalfDay): string =>
  `${printDay(on)} ${halfWords[open]}: ${reason}`;

/** One thing that differs, as a sentence. */
export function calendarChangeWords(change: CalendarChange): string {
  switch (change.code) {
    case "weekdays":
      return `Open ${printWeekdays(change.to)}; before, ${printWeekdays(change.from)}.`;
    case "closed":
      return `Closed ${closureWords(change.closure)}.`;
    case "no longer closed":
      return `No longer closed ${closureWords(change.closure)}.`;
    case "half day":
      return `Half a day: ${halfDayWords(change.half)}.`;
    case "no longer half day":
      return `No longer half a day: ${halfDayWords(change.half)}.`;
  }
}

/** When, how long, what and why: the cells of an entry of the calendar. */
export const entryWords = (entry: CalendarEntry) =>
  entry.kind === "closed"
    ? {
        when: spanWords(entry),
        long: daysWords(daysClosed(entry)),
        what: "closed",
        reason: entry.closure.reason,
      }
    : {
        when: spanWords(entry),
        long: "half a day",
        what: halfWords[entry.half.open],
        reason: entry.half.reason,
      };
