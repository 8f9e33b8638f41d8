/** Where on a time axis something stands, in percent of its width: 0 is its first day, 100 its last. */
export type Place = number;

/** A stretch of time, in days before and after today. */
export type Axis = { readonly before: number; readonly after: number };

/** What every list shows: a dwell of four months, and room for the next window. 200 days, so a day is half a percent. */
export const listAxis: Axis = { before: 125, after: 75 };

/** What a narrow page shows of the list's axis: the 60 days around today. */
export const narrowAxis: Axis = { before: 30, after: 30 };

export const daysOf = ({ before, after }: Axis): number => before + after;

/** Two decimals: a tenth of a pixel on the widest page. */
const rounded = (place: number): Place => Math.round(place * 100) / 100;

/** The place of a day that lies so many days after today; outside 0 to 100 when the axis does not reach it. */
export const placeOf = (days: number, axis: Axis): Place =>
  rounded(((days + axis.before) / daysOf(axis)) * 100);

/**
 * What a part of an axis asks of a drawing of the whole, so that only the part is in sight: the drawing's width and its left
 * edge, both in percent of the part's own width.
 */
export const cropTo = (part: Axis, whole: Axis): { readonly width: number; readonly left: number } => ({
  width: rounded((daysOf(whole) / daysOf(part)) * 100),
  left: rounded(((part.before - whole.before) / daysOf(part)) * 100),
});

const TICK_DAYS = 30;

export type Tick = { readonly days: number; readonly at: Place; readonly word: string };

const tickWord = (days: number): string =>
  days === 0 ? "today" : `${days > 0 ? "+" : "-"}${Math.abs(days)} d`;

/** Every 30 days, counted from today: "-30 d", "today", "+30 d". A long axis skips ticks, so that at most `most` are named. */
export function ticksOf(axis: Axis, most = 12): Tick[] {
  const step = TICK_DAYS * Math.max(1, Math.ceil(daysOf(axis) / TICK_DAYS / most));
  const ticks: Tick[] = [];
  for (let days = -Math.floor(axis.before / step) * step; days <= axis.after; days += step)
    ticks.push({ days, at: placeOf(days, axis), word: tickWord(days) });
  return ticks;
}
