import type { StripFacts } from "#app/strip/geometry.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";

const daysInPlace = (count: number): string => `${count} ${count === 1 ? "day" : "days"} in place`;

/** "In place 84 days, since Fri 14 Aug 2026"; of a rough start, at most that long. */
export function dwellWords({ clockEarliest, clockLatest, outOn, today }: Omit<StripFacts, "marks">): string {
  if (clockEarliest === null || clockLatest === null) return "placed on an unknown date";
  const until = outOn ?? today;
  const most = daysInPlace(daysBetween(clockEarliest, until));
  if (clockEarliest === clockLatest) return `${most}, since ${printDay(clockEarliest)}`;
  const span = `between ${printDay(clockEarliest)} and ${printDay(clockLatest)}`;
  return `at most ${most}, begun ${span}`;
}

const windowDay = (word: string, day: Day | null): string[] =>
  day === null ? [] : [`${word} ${printDay(day)}`];

/** "checked Thu 3 Sep 2026; capped Mon 2 Nov 2026": the diamonds by name; empty when there are none. */
export const marksText = (marks: StripFacts["marks"]): string =>
  marks.map(({ kind, on }) => `${kind} ${printDay(on)}`).join("; ");

/** Everything that a strip draws, as one line of text: its clock, its window, its events. */
export function stripText(facts: StripFacts): string {
  return [
    dwellWords(facts),
    ...windowDay("earliest", facts.earliest),
    ...windowDay("target", facts.target),
    ...windowDay("latest", facts.latest),
    marksText(facts.marks),
  ]
    .filter(Boolean)
    .join("; ");
}
