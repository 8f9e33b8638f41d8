declare const brand: unique symbol;

/** A calendar day of the clinic, as text `YYYY-MM-DD`. Text order is day order. */
export type Day = string & { readonly [brand]: "Day" };

/** 1 = Monday ... 7 = Sunday (ISO 8601). */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

const DAY_MS = 86_400_000;
const SHAPE = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since 1970-01-01. Calendar days have no zone, so UTC stands for all of them. */
const counted = (text: string): number =>
  Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)) - 1, Number(text.slice(8, 10))) / DAY_MS;

/** Days that were asked for, both ways: whoever dates all tubes of a clinic asks for the same few hundred again and again. */
const ordinals = new Map<Day, number>();
const texts = new Map<number, Day>();

function ordinal(day: Day): number {
  const known = ordinals.get(day);
  if (known !== undefined) return known;
  const days = counted(day);
  ordinals.set(day, days);
  return days;
}

function fromOrdinal(days: number): Day {
  const known = texts.get(days);
  if (known !== undefined) return known;
  const text = new Date(days * DAY_MS).toISOString().slice(0, 10) as Day;
  texts.set(days, text);
  return text;
}

/** True for a day that exists, in `YYYY-MM-DD`, from 1900 to 2199. */
export function isDay(text: string): text is Day {
  const match = SHAPE.exec(text);
  if (match === null) return false;
  const year = Number(match[1]);
  return year >= 1900 && year < 2200 && fromOrdinal(counted(text)) === text;
}

/** The day, for literals and for text already checked. Throws RangeError on a day that does not exist. */
export function day(text: string): Day {
  if (!isDay(text)) throw new RangeError(`not a day: ${text}`);
  return text;
}

/** `addDays('2026-08-14', 77)` is `2026-10-30`. */
export const addDays = (from: Day, days: number): Day => fromOrdinal(ordinal(from) + days);

/**
 * Months from an anchor: the last day of a shorter month stands in for one that it lacks. `addMonths('2026-01-31', 3)` is
 * `2026-04-30`. Add from the anchor, never step by step: 31 Jan + 1 + 1 months is 28 March, + 2 months 31 March.
 */
export function addMonths(from: Day, months: number): Day {
  const year = Number(from.slice(0, 4));
  const month = Number(from.slice(5, 7)) + months;
  const sameDate = Date.UTC(year, month - 1, Number(from.slice(8, 10))) / DAY_MS;
  return fromOrdinal(Math.min(sameDate, Date.UTC(year, month, 0) / DAY_MS));
}

/** Whole days from the first to the second; negative when the second is earlier. */
export const daysBetween = (from: Day, to: Day): number => ordinal(to) - ordinal(from);

export const weekdayOf = (of: Day): Weekday => (((((ordinal(of) + 3) % 7) + 7) % 7) + 1) as Weekday;

export const earlier = (a: Day, b: Day): Day => (a < b ? a : b);
export const later = (a: Day, b: Day): Day => (a > b ? a : b);

export const lastOfMonth = (year: number, month: number): Day =>
  fromOrdinal(Date.UTC(year, month, 0) / DAY_MS);

/** `2026-W53-4`: year, week and weekday of ISO 8601. */
export function isoWeek(of: Day): string {
  const weekday = weekdayOf(of);
  const thursday = addDays(of, 4 - weekday);
  const year = thursday.slice(0, 4);
  const week = Math.floor(daysBetween(`${year}-01-01` as Day, thursday) / 7) + 1;
  return `${year}-W${String(week).padStart(2, "0")}-${weekday}`;
}
