import { readShape } from "#shared/day/date-shape.ts";
import { addDays, type Day, isDay, weekdayOf } from "#shared/day/day.ts";
import { printWhen, weekdayNames } from "#shared/day/print-day.ts";
import { notAfter, onDay, type When, whenUnknown } from "#shared/day/when.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Certainty } from "#shared/tube/certainty.ts";

/**
 * Beside which day a date is read, and to which side it lies when no year is typed. `past` is for what happened: the future is
 * refused. `future` is for what is planned, and takes a past day too: a plan may be overdue.
 */
export type DayContext = { readonly today: Day; readonly direction: "past" | "future" };

/** A date with what its typing says of its certainty. Who said it (reported) is the form's to know. */
export type TypedWhen = {
  readonly when: When;
  readonly certainty: Extract<Certainty, "confirmed" | "estimated" | "unknown">;
};

const LONGEST = 60;
const ABOUT = /^(?:~ ?|about )/;
const WEEKDAY_FIRST = /^([a-z]{3,}) (.+)$/;
const AWAY = /^([+-])(\d{1,4})$/;
const namedDays: Readonly<Record<string, number>> = { yesterday: -1, today: 0, tomorrow: 1 };
/** 29 February comes every four years, and eight round 1900. */
const LONGEST_GAP_YEARS = 8;

const tidy = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[,\s]+/g, " ")
    .replace(/[–—]/g, "-")
    .trim();

function daysAway(text: string): number | undefined {
  const match = AWAY.exec(text);
  if (match === null) return Object.hasOwn(namedDays, text) ? namedDays[text] : undefined;
  return Number(match[2]) * (match[1] === "-" ? -1 : 1);
}

/** The years in which a date without one is looked for, the likeliest first. */
function yearsFor({ today, direction }: DayContext): readonly number[] {
  const thisYear = Number(today.slice(0, 4));
  const away = Array.from({ length: LONGEST_GAP_YEARS + 2 }, (_, index) => index);
  return away.map((years) => (direction === "past" ? thisYear + 1 - years : thisYear + years));
}

function readCalendarDate(text: string, context: DayContext): Parsed<When> {
  const shape = readShape(text);
  if (typeof shape === "string") return unread(shape, { text });
  const years = shape.year === undefined ? yearsFor(context) : [shape.year];
  const ranges = years.map(shape.inYear).filter((range) => range !== undefined);
  const range =
    shape.year !== undefined
      ? ranges[0]
      : ranges.find(({ earliest, latest }) =>
          context.direction === "past" ? earliest <= context.today : latest >= context.today,
        );
  if (range === undefined) return unread("day-does-not-exist", { text });
  if (range.earliest > range.latest) return unread("days-reversed", { text });
  return parsed({ precision: shape.precision, ...range });
}

/** 1 to 7 for the name of a weekday or its first three letters or more; 0 for another word. */
const weekdayCalled = (word: string): number =>
  weekdayNames.findIndex((name) => name.toLowerCase().startsWith(word)) + 1;

/** `fri 6 nov`, as dates are printed: the weekday has to agree, for a slip in one of the two is a wrong day. */
function readWithWeekday(text: string, context: DayContext): Parsed<When> | undefined {
  const [, word = "", rest = ""] = WEEKDAY_FIRST.exec(text) ?? [];
  const weekday = weekdayCalled(word);
  if (word === "" || weekday === 0) return undefined;
  const read = readCalendarDate(rest, context);
  if (!read.ok) return read;
  if (read.value.precision !== "day") return unread("day-not-understood", { text });
  const is = weekdayOf(read.value.earliest);
  if (is === weekday) return read;
  return unread("weekday-differs", { day: printWhen(read.value), weekday: weekdayNames[weekday - 1] ?? "" });
}

function readDate(text: string, context: DayContext): Parsed<When> {
  const away = daysAway(text);
  if (away === undefined) return readWithWeekday(text, context) ?? readCalendarDate(text, context);
  const day = addDays(context.today, away);
  return isDay(day) ? parsed(onDay(day)) : unread("day-does-not-exist", { text });
}

/**
 * A date as people type it: `today`, `-3`, `14 nov`, `nov 14 2026`, `2026-11-14`, `14/11/2026`, `in march`, `03/2026`, `2025`,
 * `14-20 nov`, `?`, and `~` before any of them. What printWhen prints is read back. A month in progress ends today when it speaks
 * of the past. Never throws.
 *
 * Refusals: `day-missing`, `day-not-understood`, `day-order-unclear`, `day-does-not-exist`, `days-reversed`, `day-in-future`,
 * `weekday-differs`.
 */
export function readWhen(text: string, context: DayContext): Parsed<TypedWhen> {
  if (text.length > LONGEST) return unread("day-not-understood", { text: `${text.slice(0, LONGEST)}...` });
  const whole = tidy(text);
  const estimated = ABOUT.test(whole);
  const bare = whole.replace(ABOUT, "").replace(/^(?:some ?time )?in /, "");
  if (bare === "") return unread("day-missing");
  if (/^(?:\?|unknown(?: date)?)$/.test(bare)) return parsed({ when: whenUnknown, certainty: "unknown" });

  const read = readDate(bare, context);
  if (!read.ok) return read;
  const when = context.direction === "past" ? notAfter(read.value, context.today) : read.value;
  if (when === null) return unread("day-in-future", { day: printWhen(read.value) });
  return parsed({ when, certainty: estimated ? "estimated" : "confirmed" });
}

/** One exact day; a month, a span, `~` or `?` is refused as `day-not-exact`. */
export function readDay(text: string, context: DayContext): Parsed<Day> {
  const read = readWhen(text, context);
  if (!read.ok) return read;
  const { when, certainty } = read.value;
  if (when.precision !== "day" || certainty !== "confirmed") return unread("day-not-exact", { text });
  return parsed(when.earliest);
}
