import { type CalendarChange, type CalendarEntry, daysClosed } from "#shared/day/calendar-change.ts";
import {
  type ClinicCalendar,
  type Closure,
  type DayHalf,
  type HalfDay,
  type ShutBecause,
  whyShut,
} from "#shared/day/clinic-days.ts";
import { printDay, weekdayNames } from "#shared/day/print-day.ts";
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

/** What the calendar says of a day already. */
export function shutWords(shut: ShutBecause | null): string {
  if (shut === null) return "open";
  if (shut.code === "closure") return `closed already: ${shut.reason}`;
  return `closed already on every ${weekdayNames[shut.weekday - 1] ?? ""}`;
}

export const holidaysWords = (count: number): string => `${count} ${count === 1 ? "holiday" : "holidays"}`;

type EntryWords = Readonly<Record<"when" | "long" | "what" | "reason", string>>;

/** When, how long, what and why: the cells of an entry. Beside its calendar a half day on which the clinic is closed says so. */
export function entryWords(entry: CalendarEntry, calendar?: ClinicCalendar): EntryWords {
  const when = spanWords(entry);
  if (entry.kind === "closed")
    return { when, long: daysWords(daysClosed(entry)), what: "closed", reason: entry.closure.reason };
  const { on, open, reason } = entry.half;
  const shut = calendar === undefined ? null : whyShut(on, calendar);
  const what = shut === null ? halfWords[open] : `${halfWords[open]}, but ${shutWords(shut)}`;
  return { when, long: "half a day", what, reason };
}
