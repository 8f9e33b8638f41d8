import type { Weekday } from "#shared/day/day.ts";
import { weekdayNames } from "#shared/day/print-day.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";

const IN_WEEK = 7;
/** "mo" and longer: one letter of tuesday or saturday would mean two. */
const SHORTEST = 2;

const weekdayCalled = (word: string): Weekday | null => {
  const at = weekdayNames.findIndex((name) => name.toLowerCase().startsWith(word));
  return word.length < SHORTEST || at === -1 ? null : ((at + 1) as Weekday);
};

/** Friday to Monday goes over the weekend. */
function between(from: Weekday, to: Weekday): Weekday[] {
  const days = ((to - from + IN_WEEK) % IN_WEEK) + 1;
  return Array.from({ length: days }, (_, away) => (((from - 1 + away) % IN_WEEK) + 1) as Weekday);
}

function readPart(part: string): readonly Weekday[] | null {
  const [from = "", to = from, ...more] = part.split("-");
  const first = weekdayCalled(from);
  const last = weekdayCalled(to);
  return first === null || last === null || more.length > 0 ? null : between(first, last);
}

/**
 * Weekdays as people type them: `mon-fri`, `mon wed fri`, `tue to thu, sat`, `every day`. In the order of the week, each once.
 * Refusals: `weekdays-none`, `weekdays-not-understood`.
 */
export function readWeekdays(text: string): Parsed<readonly Weekday[]> {
  const whole = text
    .toLowerCase()
    .replace(/[–—]/g, "-")
    .replace(/\s*(?:-|\bto\b)\s*/g, "-")
    .replace(/\band\b|[,;+&.\s]+/g, " ")
    .trim();
  if (whole === "" || whole === "none") return unread("weekdays-none");
  if (/^(?:every day|all|daily)$/.test(whole)) return parsed(between(1, IN_WEEK));
  const parts = whole.split(/\s+/).map(readPart);
  if (parts.includes(null)) return unread("weekdays-not-understood", { text: text.trim() });
  const days = new Set(parts.flatMap((part) => part ?? []));
  return parsed([...days].toSorted((a, b) => a - b));
}

/** `Monday to Friday`; `Monday, Wednesday, Friday`; `no day of the week`. What it prints is read back. */
export function printWeekdays(days: readonly Weekday[]): string {
  const [first, ...more] = days.toSorted((a, b) => a - b);
  if (first === undefined) return "no day of the week";
  const last = more.at(-1) ?? first;
  const name = (of: Weekday): string => weekdayNames[of - 1] ?? "";
  if (more.length > 1 && last - first === more.length) return `${name(first)} to ${name(last)}`;
  return [first, ...more].map(name).join(", ");
}
