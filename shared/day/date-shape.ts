import { type Day, isDay, lastOfMonth } from "#shared/day/day.ts";
import { monthNames } from "#shared/day/print-day.ts";
import type { Precision } from "#shared/day/when.ts";
import type { RefusalCode } from "#shared/errors/codes.ts";

/** What a typed date says before a year is chosen for it. `inYear` is undefined in years that lack such a day. */
export type DateShape = {
  readonly precision: Exclude<Precision, "unknown">;
  readonly year: number | undefined;
  readonly inYear: (year: number) => { readonly earliest: Day; readonly latest: Day } | undefined;
};

/** A shape, the reason why it is none, or undefined: some other shape. */
type Attempt<T> = T | RefusalCode | undefined;

type MonthDay = { readonly date: number; readonly month: number; readonly year: number | undefined };

const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const NUMBERS = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/;
const DATE_FIRST = /^(\d{1,2})(?:st|nd|rd|th)?[ .-]*([a-z]{3,})(?:[ .-]*(\d{4}))?$/;
const MONTH_FIRST = /^([a-z]{3,})[ .-]*(\d{1,2})(?:st|nd|rd|th)?(?:[ .-]+(\d{4}))?$/;
const MONTH_NAMED = /^([a-z]{3,})[ .-]*(\d{4})?$/;
const MONTH_NUMBERED = /^(?:(?<month>\d{1,2})[./](?<year>\d{4})|(?<isoYear>\d{4})-(?<isoMonth>\d{1,2}))$/;
const YEAR = /^\d{4}$/;
const BARE_DATE = /^(\d{1,2})(?: (\d{4}))?$/;

const numberOr = (text: string | undefined): number | undefined =>
  text === undefined ? undefined : Number(text);

/** 1 to 12 for a month's name or its first three letters or more; undefined for another word. */
function monthOf(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  const index = monthNames.findIndex((name) => name.toLowerCase().startsWith(word === "sept" ? "sep" : word));
  return index < 0 ? undefined : index + 1;
}

const padded = (number: number): string => String(number).padStart(2, "0");

function dayIn(year: number, { month, date }: MonthDay): Day | undefined {
  const text = `${year}-${padded(month)}-${padded(date)}`;
  return isDay(text) ? text : undefined;
}

/** `3/4/2026` is April or March: asked, never guessed. `14/11/2026` and `4/4/2026` can be read in one way only. */
function readNumbers(match: RegExpExecArray): Attempt<MonthDay> {
  const [first = 0, second = 0, year] = match.slice(1).map(Number);
  if (first <= 12 && second <= 12 && first !== second) return "day-order-unclear";
  return first > 12 ? { date: first, month: second, year } : { date: second, month: first, year };
}

function readNamed(text: string): MonthDay | undefined {
  const dateFirst = DATE_FIRST.exec(text);
  const monthFirst = MONTH_FIRST.exec(text);
  const [name, date, year] =
    dateFirst === null ? (monthFirst?.slice(1) ?? []) : [dateFirst[2], dateFirst[1], dateFirst[3]];
  const month = monthOf(name);
  return month === undefined ? undefined : { date: Number(date), month, year: numberOr(year) };
}

function readMonthDay(text: string): Attempt<MonthDay> {
  const iso = ISO.exec(text);
  if (iso !== null) return { year: Number(iso[1]), month: Number(iso[2]), date: Number(iso[3]) };
  const numbers = NUMBERS.exec(text);
  return numbers === null ? readNamed(text) : readNumbers(numbers);
}

/** The two ends of `14-20 nov`, `nov 14-20 2026`, `28 dec to 3 jan`: an end lends what the other lacks. */
function readEnds(text: string): Attempt<readonly [MonthDay, MonthDay]> {
  const spaced = text.split(/ (?:-|to) /);
  const [left, right, ...more] = spaced.length === 2 ? spaced : text.split("-");
  if (left === undefined || right === undefined || more.length > 0) return undefined;
  const bareLeft = BARE_DATE.exec(left);
  const bareRight = BARE_DATE.exec(right);
  const from = bareLeft === null ? readMonthDay(left) : undefined;
  const to = bareRight === null ? readMonthDay(right) : undefined;
  if (typeof from === "string") return from;
  if (typeof to === "string") return to;
  if (bareLeft !== null && to !== undefined) return [{ ...to, date: Number(bareLeft[1]) }, to];
  if (bareRight === null || from === undefined) return from && to && [from, to];
  const year = numberOr(bareRight[2]) ?? from.year;
  return [
    { ...from, year },
    { ...from, year, date: Number(bareRight[1]) },
  ];
}

function readSpan(text: string): Attempt<DateShape> {
  const ends = readEnds(text);
  if (ends === undefined || typeof ends === "string") return ends;
  const [from, to] = ends;
  const newYears = from.month > to.month ? 1 : 0;
  const year = to.year ?? (from.year === undefined ? undefined : from.year + newYears);
  const fromYear = (endYear: number) => from.year ?? endYear - newYears;
  if (from.month === to.month && from.date > to.date && (year === undefined || fromYear(year) === year)) {
    return "days-reversed";
  }
  const inYear = (endYear: number) => {
    const earliest = dayIn(fromYear(endYear), from);
    const latest = dayIn(endYear, to);
    return earliest === undefined || latest === undefined ? undefined : { earliest, latest };
  };
  return { precision: "span", year, inYear };
}

function readOneDay(text: string): Attempt<DateShape> {
  const at = readMonthDay(text);
  if (at === undefined || typeof at === "string") return at;
  const inYear = (year: number) => {
    const on = dayIn(year, at);
    return on === undefined ? undefined : { earliest: on, latest: on };
  };
  return { precision: "day", year: at.year, inYear };
}

function readMonth(text: string): DateShape | undefined {
  const named = MONTH_NAMED.exec(text);
  const numbered = MONTH_NUMBERED.exec(text)?.groups;
  const month = named === null ? numberOr(numbered?.month ?? numbered?.isoMonth) : monthOf(named[1]);
  if (month === undefined) return undefined;
  const inYear = (year: number) => {
    const earliest = dayIn(year, { year, month, date: 1 });
    return earliest === undefined ? undefined : { earliest, latest: lastOfMonth(year, month) };
  };
  return { precision: "month", year: numberOr(named?.[2] ?? numbered?.year ?? numbered?.isoYear), inYear };
}

function readYear(text: string): DateShape | undefined {
  if (!YEAR.test(text)) return undefined;
  const inYear = (year: number) => {
    const earliest = dayIn(year, { year, month: 1, date: 1 });
    return earliest === undefined ? undefined : { earliest, latest: lastOfMonth(year, 12) };
  };
  return { precision: "year", year: Number(text), inYear };
}

/** The shape of a date in lower case with single spaces, or the reason why it is none. */
export function readShape(text: string): DateShape | RefusalCode {
  return readOneDay(text) ?? readMonth(text) ?? readYear(text) ?? readSpan(text) ?? "day-not-understood";
}
