import { addDays, type Day, type Weekday, weekdayOf } from "#shared/day/day.ts";

/** Days on which the clinic is shut, both ends included. */
export type Closure = { readonly from: Day; readonly to: Day; readonly reason: string };

export const dayHalves = ["morning", "afternoon"] as const;
export type DayHalf = (typeof dayHalves)[number];

/** A day on which the clinic is open for one half only: until noon, or from noon on. For dates it is an open day. */
export type HalfDay = { readonly on: Day; readonly open: DayHalf; readonly reason: string };

/** The clinic's own calendar. A change makes a new version; a version is never edited. */
export type ClinicCalendar = {
  readonly version: number;
  readonly openWeekdays: readonly Weekday[];
  readonly closures: readonly Closure[];
  /** None, where left out: versions before half days were kept know of none. */
  readonly halfDays?: readonly HalfDay[] | undefined;
};

/** The search for an open day ends after this many days: a clinic that is shut for longer needs a person, not a date. */
const SEARCH_DAYS = 800;

/** Why the clinic is shut on a day: a code, and the closure's own reason where there is one. */
export type ShutBecause =
  | { readonly code: "closure"; readonly reason: string }
  | { readonly code: "closed-weekday"; readonly weekday: Weekday };

/** Why the clinic is shut on that day, or null when it is open. A named closure is told before the weekday. */
export function whyShut(on: Day, calendar: ClinicCalendar): ShutBecause | null {
  const closure = calendar.closures.find(({ from, to }) => from <= on && on <= to);
  if (closure !== undefined) return { code: "closure", reason: closure.reason };
  const weekday = weekdayOf(on);
  return calendar.openWeekdays.includes(weekday) ? null : { code: "closed-weekday", weekday };
}

export const isOpen = (on: Day, calendar: ClinicCalendar): boolean => whyShut(on, calendar) === null;

function search(from: Day, step: 1 | -1, calendar: ClinicCalendar): Day | null {
  for (let away = 0; away <= SEARCH_DAYS; away += 1) {
    const day = addDays(from, away * step);
    if (isOpen(day, calendar)) return day;
  }
  return null;
}

/** The first open day on or after `from`; null when there is none within 800 days. */
export const nextOpenDay = (from: Day, calendar: ClinicCalendar): Day | null => search(from, 1, calendar);

/** The last open day on or before `from`; null when there is none within 800 days. */
export const previousOpenDay = (from: Day, calendar: ClinicCalendar): Day | null =>
  search(from, -1, calendar);

/**
 * Open days counted from the day after `from`, or before it when `count` is negative; `from` itself need not be open and is the
 * answer for 0. Thu 2 Apr 2026 + 1 is 7 April in England, where Good Friday and Easter Monday are shut. Null as above.
 */
export function addWorkingDays(from: Day, count: number, calendar: ClinicCalendar): Day | null {
  const step = count < 0 ? -1 : 1;
  let day: Day | null = from;
  for (let left = Math.abs(count); left > 0 && day !== null; left -= 1) {
    day = search(addDays(day, step), step, calendar);
  }
  return day;
}

export const windowEnds = ["earliest", "target", "latest"] as const;
export type WindowEnd = (typeof windowEnds)[number];

/** Three dates of a step; null where the row has none. */
export type DayWindow = Readonly<Record<WindowEnd, Day | null>>;

/** One date that did not stay. `to` is null when there was no open day to go to. */
export type Moved = {
  readonly end: WindowEnd;
  readonly from: Day;
  readonly to: Day | null;
  readonly because: ShutBecause | { readonly code: "before-earliest" };
};

export type FittedWindow =
  | { readonly kind: "fits"; readonly window: DayWindow; readonly moved: readonly Moved[] }
  | { readonly kind: "no day left"; readonly asked: DayWindow; readonly moved: readonly Moved[] };

/**
 * A window brought onto open days, towards its inside: an earliest on a shut day moves later, target and latest move earlier. A target
 * that would then lie before the earliest goes with the earliest. Says what moved and why; `no day left` when nothing remains.
 */
export function fitWindow(asked: DayWindow, calendar: ClinicCalendar): FittedWindow {
  const moved: Moved[] = [];
  const settle = (end: WindowEnd): Day | null => {
    const from = asked[end];
    const because = from === null ? null : whyShut(from, calendar);
    if (from === null || because === null) return from;
    const to = end === "earliest" ? nextOpenDay(from, calendar) : previousOpenDay(from, calendar);
    moved.push({ end, from, to, because });
    return to;
  };
  const earliest = settle("earliest");
  let target = settle("target");
  const latest = settle("latest");
  const empty = earliest !== null && latest !== null && earliest > latest;
  if (empty || moved.some(({ to }) => to === null)) return { kind: "no day left", asked, moved };
  if (earliest !== null && target !== null && target < earliest) {
    moved.push({ end: "target", from: target, to: earliest, because: { code: "before-earliest" } });
    target = earliest;
  }
  return { kind: "fits", window: { earliest, target, latest }, moved };
}
