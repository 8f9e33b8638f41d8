import type { Weekday } from "#shared/day/day.ts";
import { weekdayNames } from "#shared/day/print-day.ts";
import { printWeekdays, readWeekdays } from "#shared/day/weekdays.ts";
import { type Parsed, parsed, type Refusal, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { readMinute } from "#shared/visit/read-minute.ts";
import { type Minute, MOST_SPANS, type Room, type Span } from "#shared/visit/room.ts";
import { hoursWords } from "#shared/words/hours.ts";
import { printMinute } from "#shared/words/offers.ts";

type Hours = Room["hours"];

function readSpan(text: string): Parsed<Span> {
  const [first = "", last = "", ...more] = text.split("-");
  const [from, to] = [readMinute(first), readMinute(last)];
  if (from === null || to === null || more.length > 0) return unread("hours-not-understood", { text });
  const args = { from: printMinute(from), to: printMinute(to) };
  if (from === to) return unread("hours-without-length", args);
  return from > to ? unread("hours-end-before-beginning", args) : parsed({ from, to });
}

/** In small letters, with one sign for "to" and a comma between a time and the weekday after it. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\b(?:every day|daily)\b/g, "mon-sun")
    .replace(/\bnoon\b/g, "12")
    .replace(/\bfrom\b/g, " ")
    .replace(/\band\b|[;&+\n]/g, ",")
    .replace(/([a-z])[.:]/g, "$1 ")
    .replace(/\s*(?:[-–—]|\b(?:to|until|till)\b)\s*/g, "-")
    .replace(/\s+/g, " ")
    .replace(/ (?=[ap]m\b)/g, "")
    .replace(/(\d(?:[ap]m)?) (?=[a-z])/g, "$1,")
    .trim();

/** Weekdays, and the spans of each of them. */
type Group = { readonly weekdays: string; readonly spans: readonly string[] };

/** "mon, wed 8-12, 13-15, fri 8-12": days without hours wait for those that follow; hours without days belong to the days before. */
function groupsIn(text: string): readonly Group[] {
  const groups: { weekdays: string; spans: string[] }[] = [];
  for (const part of plain(text).split(/ ?, ?/)) {
    const at = part.search(/\d/);
    const weekdays = (at === -1 ? part : part.slice(0, at)).trim();
    const spans = at === -1 ? [] : part.slice(at).split(" ");
    const last = groups.at(-1);
    if (last !== undefined && (weekdays === "" || last.spans.length === 0)) {
      last.weekdays = `${last.weekdays} ${weekdays}`.trim();
      last.spans.push(...spans);
    } else if (part !== "") groups.push({ weekdays, spans });
  }
  return groups;
}

function readGroup({ weekdays, spans }: Group): Parsed<Hours> {
  if (weekdays === "") return unread("hours-without-weekday", { text: spans.join(", ") });
  const days = readWeekdays(weekdays);
  if (!days.ok) return unread("weekdays-not-understood", { text: weekdays });
  if (spans.length === 0) return unread("weekday-without-hours", { weekdays: printWeekdays(days.value) });
  const read: Span[] = [];
  for (const span of spans.map(readSpan)) {
    if (!span.ok) return span;
    read.push(span.value);
  }
  return parsed(days.value.flatMap((weekday) => read.map((span) => ({ weekday, ...span }))));
}

/** The spans of one weekday in order, those that touch as one. */
function joined(weekday: Weekday, hours: Hours): Parsed<Hours> {
  const whole: { weekday: Weekday; from: Minute; to: Minute }[] = [];
  const name = weekdayNames[weekday - 1] ?? "";
  for (const span of hours.filter((one) => one.weekday === weekday).toSorted((a, b) => a.from - b.from)) {
    const last = whole.at(-1);
    if (last !== undefined && span.from < last.to)
      return unread("hours-overlap", {
        weekday: name,
        to: printMinute(last.to),
        from: printMinute(span.from),
      });
    if (last !== undefined && span.from === last.to) last.to = span.to;
    else whole.push({ ...span });
  }
  if (whole.length > MOST_SPANS) return unread("hours-too-many", { weekday: name, most: MOST_SPANS });
  return parsed(whole);
}

/**
 * Hours by weekday as people type them: `mon-thu 8-16:30, fri 8-12, 13-15`; in the order of the week and the day, minutes after midnight.
 * Refusals: `hours-missing`, `hours-not-understood`, `hours-without-weekday`, `weekday-without-hours`, `weekdays-not-understood`,
 * `hours-end-before-beginning`, `hours-without-length`, `hours-overlap`, `hours-too-many`.
 */
export function readHours(text: string): Parsed<Hours> {
  const groups = groupsIn(text).map(readGroup);
  if (groups.length === 0) return unread("hours-missing");
  const read = groups.flatMap((group) => (group.ok ? group.value : []));
  const days = ([1, 2, 3, 4, 5, 6, 7] as const).map((weekday) => joined(weekday, read));
  const refused = [...groups, ...days].find((one): one is { ok: false; refusal: Refusal } => !one.ok);
  return refused ?? parsed(days.flatMap((one) => (one.ok ? one.value : [])));
}

/** When a room is staffed. The echo says it in full. */
export const hoursField = (words: FieldWords): FieldSpec<Hours> => ({
  ...words,
  read: readHours,
  echo: hoursWords,
});
