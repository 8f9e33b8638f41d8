import type { ClinicCalendar, Closure, HalfDay } from "#shared/day/clinic-days.ts";
import { type Day, daysBetween, type Weekday } from "#shared/day/day.ts";

const byText = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

/** The same calendar with its weekdays, closures and half days in the order of their days. */
export const inOrder = (calendar: ClinicCalendar): ClinicCalendar => ({
  version: calendar.version,
  openWeekdays: calendar.openWeekdays.toSorted((a, b) => a - b),
  closures: calendar.closures.toSorted((a, b) => byText(a.from + a.to, b.from + b.to)),
  halfDays: (calendar.halfDays ?? []).toSorted((a, b) => byText(a.on, b.on)),
});

/** How two calendars differ, one thing a line: what was there and is not, what is there and was not. */
export type CalendarChange =
  | { readonly code: "weekdays"; readonly from: readonly Weekday[]; readonly to: readonly Weekday[] }
  | { readonly code: "closed" | "no longer closed"; readonly closure: Closure }
  | { readonly code: "half day" | "no longer half day"; readonly half: HalfDay };

const keyOf = (of: Closure | HalfDay): string =>
  "on" in of ? `${of.on} ${of.open} ${of.reason}` : `${of.from} ${of.to} ${of.reason}`;

function onlyIn<T extends Closure | HalfDay>(some: readonly T[], others: readonly T[]): readonly T[] {
  const keys = new Set(others.map(keyOf));
  return some.filter((one) => !keys.has(keyOf(one)));
}

/** What differs from one calendar to another, what was taken away first; the order in which either is kept says nothing. */
export function calendarChanges(before: ClinicCalendar, after: ClinicCalendar): readonly CalendarChange[] {
  const [was, is] = [inOrder(before), inOrder(after)];
  const weekdays = was.openWeekdays.join() === is.openWeekdays.join();
  return [
    ...(weekdays ? [] : [{ code: "weekdays" as const, from: was.openWeekdays, to: is.openWeekdays }]),
    ...onlyIn(was.closures, is.closures).map((closure) => ({ code: "no longer closed" as const, closure })),
    ...onlyIn(is.closures, was.closures).map((closure) => ({ code: "closed" as const, closure })),
    ...onlyIn(was.halfDays ?? [], is.halfDays ?? []).map((half) => ({
      code: "no longer half day" as const,
      half,
    })),
    ...onlyIn(is.halfDays ?? [], was.halfDays ?? []).map((half) => ({ code: "half day" as const, half })),
  ];
}

/** Days of a closure, both ends counted. */
export const daysClosed = ({ from, to }: Pick<Closure, "from" | "to">): number => daysBetween(from, to) + 1;

export const overlaps = (a: Pick<Closure, "from" | "to">, b: Pick<Closure, "from" | "to">): boolean =>
  a.from <= b.to && b.from <= a.to;

/** One entry of the calendar by itself: a closure or a half day. */
export type CalendarEntry =
  | { readonly kind: "closed"; readonly from: Day; readonly to: Day; readonly closure: Closure }
  | { readonly kind: "half day"; readonly from: Day; readonly to: Day; readonly half: HalfDay };

/** Closures and half days together in the order of their days; one that has not ended today is to come. */
export function calendarEntries(
  calendar: ClinicCalendar,
  today: Day,
): { readonly coming: readonly CalendarEntry[]; readonly past: readonly CalendarEntry[] } {
  const { closures, halfDays = [] } = inOrder(calendar);
  const all: readonly CalendarEntry[] = [
    ...closures.map((closure) => ({ kind: "closed" as const, from: closure.from, to: closure.to, closure })),
    ...halfDays.map((half) => ({ kind: "half day" as const, from: half.on, to: half.on, half })),
  ];
  const ordered = all.toSorted((a, b) => byText(a.from, b.from));
  return {
    coming: ordered.filter(({ to }) => to >= today),
    past: ordered.filter(({ to }) => to < today).toReversed(),
  };
}
