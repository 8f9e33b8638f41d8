import type { Closure } from "#shared/day/clinic-days.ts";
import { addDays, type Day } from "#shared/day/day.ts";

/** From when the clinic is shut, in days after the demo's first, and for two weeks. */
export const SHUT_FROM = 42;
export const SHUT_TO = SHUT_FROM + 13;

/** What the invented clinic's calendar knows when it begins: two weeks in which its room is rebuilt. */
export const inventedClosures = (startDay: Day): readonly Closure[] => [
  { from: addDays(startDay, SHUT_FROM), to: addDays(startDay, SHUT_TO), reason: "the room is rebuilt" },
];
