import { addDays, type Day, weekdayOf } from "#shared/day/day.ts";

const FRIDAY = 5;

/** Days before the start day, moved back to a weekday: what is planned happens when the clinic is open. */
export function onWeekday(startDay: Day, daysAgo: number): number {
  const weekday = weekdayOf(addDays(startDay, -daysAgo));
  return daysAgo + Math.max(0, weekday - FRIDAY);
}

/** How many days before the start day the last Friday was, 1 to 7. */
export const lastFriday = (startDay: Day): number => ((weekdayOf(startDay) - FRIDAY + 6) % 7) + 1;

/** The month of that day as somebody types it who knows no more: "03/2026". */
export function monthOf(startDay: Day, daysAgo: number): string {
  const on = addDays(startDay, -daysAgo);
  return `${on.slice(5, 7)}/${on.slice(0, 4)}`;
}

/** The same, moved on to a weekday: negative where that still lies ahead. */
export function nextWeekday(startDay: Day, daysAgo: number): number {
  const weekday = weekdayOf(addDays(startDay, -daysAgo));
  return weekday > FRIDAY ? daysAgo - (8 - weekday) : daysAgo;
}
