import { type ClinicCalendar, type DayHalf, isOpen } from "#shared/day/clinic-days.ts";
import { type Day, type Weekday, weekdayOf } from "#shared/day/day.ts";

/** What a room can do, and what an act needs of one. */
export const abilities = ["fluoroscopy", "ultrasound", "CT", "sedation", "anesthesia", "isolation"] as const;
export type Ability = (typeof abilities)[number];

/** Minutes after midnight by the clinic's clock, 0 to 1440. */
export type Minute = number;

/** From a minute up to another, which is no longer of it. */
export type Span = { readonly from: Minute; readonly to: Minute };

export const NOON: Minute = 720;

/** The clinic's clock reads the half of a day off its minute. */
export const halfOf = (at: Minute): DayHalf => (at < NOON ? "morning" : "afternoon");

/** Times of one weekday between which a room is not staffed are few: a morning, an afternoon, and two more. */
export const MOST_SPANS = 4;
/** Characters of a room's name. */
export const ROOM_NAME_LIMIT = 60;

/** One room of the clinic: what it can do, when it is staffed, and how much of each day stays free for what is urgent. */
export type Room = {
  readonly id: string;
  readonly name: string;
  readonly can: readonly Ability[];
  /** At most `MOST_SPANS` a weekday, in any order; they do not overlap. */
  readonly hours: readonly (Span & { readonly weekday: Weekday })[];
  /** Minutes of a day that planned visits leave free. */
  readonly reserve: number;
};

/** What takes a room's time. */
export type Booking = {
  readonly id: string;
  readonly roomId: string;
  readonly on: Day;
  readonly from: Minute;
  readonly minutes: number;
};

export const endOf = ({ from, minutes }: Pick<Booking, "from" | "minutes">): Minute => from + minutes;

const clip = ({ from, to }: Span, within: Span): Span => ({
  from: Math.max(from, within.from),
  to: Math.min(to, within.to),
});

/** The half of a day for which the clinic opens; all of it on a day that is not halved. */
function openPart(on: Day, { halfDays = [] }: ClinicCalendar): Span {
  const half = halfDays.find((halved) => halved.on === on)?.open;
  if (half === undefined) return { from: 0, to: 1440 };
  return half === "morning" ? { from: 0, to: NOON } : { from: NOON, to: 1440 };
}

/** When a room is staffed on a day, in order of time; nothing on a day on which the clinic is shut. */
export function openSpans(room: Room, on: Day, calendar: ClinicCalendar): Span[] {
  if (!isOpen(on, calendar)) return [];
  const weekday = weekdayOf(on);
  const part = openPart(on, calendar);
  return room.hours
    .filter((hours) => hours.weekday === weekday)
    .map((hours) => clip(hours, part))
    .filter(({ from, to }) => from < to)
    .toSorted((a, b) => a.from - b.from);
}

/** What bookings leave of spans, in order of time. */
export function gapsBetween(
  spans: readonly Span[],
  taken: readonly Pick<Booking, "from" | "minutes">[],
): Span[] {
  const inOrder = taken.toSorted((a, b) => a.from - b.from);
  return spans.flatMap(({ from, to }) => {
    const gaps: Span[] = [];
    let free = from;
    for (const booking of inOrder) {
      if (endOf(booking) <= free || booking.from >= to) continue;
      if (booking.from > free) gaps.push({ from: free, to: booking.from });
      free = Math.max(free, endOf(booking));
    }
    if (free < to) gaps.push({ from: free, to });
    return gaps;
  });
}

export const minutesOf = (spans: readonly Span[]): number =>
  spans.reduce((sum, { from, to }) => sum + to - from, 0);
