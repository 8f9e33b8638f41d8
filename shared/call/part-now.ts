import type { CallRows, DayPart } from "#shared/protocol/call-rows.ts";

const HOURS = 60;

/** The minute of the day at `HH:MM`. */
export const minuteOf = (time: string): number => Number(time.slice(0, 2)) * HOURS + Number(time.slice(3));

/** The part of the day that a time `HH:MM` falls into, by the clinic's rows; null outside of all of them, or where no row has any. */
export function partNow(time: string, hours: CallRows["hours"]): DayPart | null {
  const minute = minuteOf(time);
  return hours.find(({ from, to }) => minute >= from * HOURS && minute < to * HOURS)?.part ?? null;
}
