import type { Day } from "#shared/day/day.ts";
import type { Clinic } from "#shared/visit/may-book.ts";
import type { Span } from "#shared/visit/room.ts";

/** Visits begin at every so many minutes past the hour. */
export const GRID = 5;

/**
 * What of a day's gaps can still be booked: nothing of a past day, of today what lies ahead from the next minute on the grid on. A gap
 * with no such minute in it is none.
 */
export function stillFree(gaps: readonly Span[], on: Day, { now }: Pick<Clinic, "now">): Span[] {
  if (on < now.on) return [];
  const soonest = on === now.on ? now.at : 0;
  return gaps
    .map(({ from, to }) => ({ from: Math.ceil(Math.max(from, soonest) / GRID) * GRID, to }))
    .filter(({ from, to }) => from < to);
}
