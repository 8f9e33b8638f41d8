import type { Weekday } from "#shared/day/day.ts";
import { printWeekdays } from "#shared/day/weekdays.ts";
import type { Minute, Room, Span } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";

type Hours = Room["hours"];

/** Weekdays on which a room is staffed alike. */
type Alike = { readonly weekdays: readonly Weekday[]; readonly spans: readonly Span[] };

const inWeek = [1, 2, 3, 4, 5, 6, 7] as const;

const spanText = ({ from, to }: Span): string => `${printMinute(from)} to ${printMinute(to)}`;

function alikeIn(hours: Hours): readonly Alike[] {
  const groups = new Map<string, { weekdays: Weekday[]; spans: readonly Span[] }>();
  for (const weekday of inWeek) {
    const spans = hours.filter((span) => span.weekday === weekday).toSorted((a, b) => a.from - b.from);
    if (spans.length === 0) continue;
    const key = spans.map(spanText).join();
    const group = groups.get(key) ?? { weekdays: [], spans };
    group.weekdays.push(weekday);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** "Monday to Thursday 08:00 to 16:30", "Friday 08:00 to 12:00, 13:00 to 15:00": one line for the days that are alike. */
export const hoursLines = (hours: Hours): readonly string[] =>
  alikeIn(hours).map(({ weekdays, spans }) => `${printWeekdays(weekdays)} ${spans.map(spanText).join(", ")}`);

/** The same lines in one. What it prints is read back. */
export const hoursWords = (hours: Hours): string => hoursLines(hours).join("; ");

const typedWeekdays = (days: readonly Weekday[]): string =>
  printWeekdays(days)
    .toLowerCase()
    .replace(/([a-z]{3})[a-z]*day/g, "$1")
    .replace(" to ", "-");

const typedMinute = (at: Minute): string =>
  printMinute(at)
    .replace(/^0(?=\d)/, "")
    .replace(/:00$/, "");

const typedSpan = ({ from, to }: Span): string => `${typedMinute(from)}-${typedMinute(to)}`;

/** As a person types them: "mon-thu 8-16:30, fri 8-12, 13-15". */
export const hoursTyped = (hours: Hours): string =>
  alikeIn(hours)
    .map(({ weekdays, spans }) => `${typedWeekdays(weekdays)} ${spans.map(typedSpan).join(", ")}`)
    .join(", ");
