import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { DateOrder } from "#shared/sheet/answers.ts";
import { saysUnknown } from "#shared/sheet/plain-cell.ts";

const NUMBERS = /^(\d{1,2})[/.-](\d{1,2})(?:[/.-](\d{4}|\d{2}))?$/;
const YEAR_FIRST = /^(\d{4})[/.](\d{1,2})[/.](\d{1,2})$/;
const RUN_TOGETHER = /^((?:19|20)\d{2})(\d{2})(\d{2})$/;
const SHORT_YEAR = /^(\d{1,2}(?:st|nd|rd|th)?)[ ./-]*([a-z]{3,9})[ .,/-]*'?(\d{2})$/i;
const MONTH_WITH_YEAR = /^([a-z]{3,9})[ .]*'(\d{2})$/i;
const MONTH_OR_DAY = /^[a-z]{3,9}[ -]\d{2}$/i;
const DAY_NUMBER = /^\d{5}(?:\.\d+)?$/;
const MIDNIGHT = /[T ]00:00(?::00(?:\.0+)?)?(?:Z| ?am)?$/i;
const SECONDS = /^(.*\d)[T ](\d{1,2}:\d{2}):\d{2}(?:\.\d+)?Z?$/;
const ABOUT = /^(?:~|approx(?:imately)?\.?|circa|ca?\.|about|early|mid|late|\?)[ -]*(?=\S)/i;

/** The two numbers at the head of a date written in numbers, whatever order they stand in. */
const numbersOf = (cell: string) => {
  const [, first, second, year] = NUMBERS.exec(withoutClock(cell).replace(ABOUT, "")) ?? [];
  return first === undefined || second === undefined
    ? undefined
    : { first: Number(first), second: Number(second), year };
};

/** Which order a date in numbers proves; `unclear` where both can be read, undefined where the order says nothing. */
export function orderShown(cell: string): DateOrder | "unclear" | undefined {
  const numbers = numbersOf(cell.trim());
  if (numbers === undefined || numbers.first === numbers.second) return undefined;
  if (numbers.first > 12) return numbers.second > 12 ? undefined : "day first";
  return numbers.second > 12 ? "month first" : "unclear";
}

const withoutClock = (cell: string): string => cell.replace(MIDNIGHT, "").replace(SECONDS, "$1 $2");
const two = (number: number): string => String(number).padStart(2, "0");

/** Tubes are of this century. A birth may be of either: two digits that fit both are asked. */
function fullYear(year: string, field: DatedField, thisYear: number): number | undefined {
  if (year.length === 4) return Number(year);
  const inThis = 2000 + Number(year);
  if (field !== "birthOn") return inThis;
  return inThis > thisYear ? inThis - 100 : undefined;
}

/** What a date is of: a birth may lie in the century before, nothing else does. */
type DatedField = "birthOn" | (string & {});

type Asked = {
  readonly field: DatedField;
  readonly order: DateOrder | null;
  /** In which the sheet is read. */
  readonly thisYear: number;
};

function fromNumbers(
  cell: string,
  { first, second, year }: { first: number; second: number; year: string | undefined },
  { field, order, thisYear }: Asked,
): Parsed<string> {
  const shown = orderShown(cell);
  if (shown === "unclear" && order === null) return unread("day-order-unclear", { text: cell });
  if (shown !== undefined && shown !== "unclear" && order !== null && shown !== order)
    return unread("date-other-order", { text: cell, order });
  const dayFirst = (shown === "unclear" || shown === undefined ? order : shown) !== "month first";
  const [date, month] = dayFirst ? [first, second] : [second, first];
  if (year === undefined)
    return month > 12 ? unread("day-does-not-exist", { text: cell }) : parsed(named(date, month));
  const full = fullYear(year, field, thisYear);
  return full === undefined
    ? unread("birth-century-unclear", { text: cell })
    : parsed(`${full}-${two(month)}-${two(date)}`);
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const named = (date: number, month: number): string => `${date} ${months[month - 1] ?? ""}`;

function fromWords(cell: string, { field, thisYear }: Asked): Parsed<string> {
  const [, date, month, year] = SHORT_YEAR.exec(cell) ?? [];
  if (date !== undefined && month !== undefined && year !== undefined) {
    const full = fullYear(year, field, thisYear);
    return full === undefined
      ? unread("birth-century-unclear", { text: cell })
      : parsed(`${date} ${month} ${full}`);
  }
  const [, inMonth, inYear] = MONTH_WITH_YEAR.exec(cell) ?? [];
  if (inMonth !== undefined) return parsed(`${inMonth} 20${inYear}`);
  if (MONTH_OR_DAY.test(cell)) return unread("month-or-day-unclear", { text: cell });
  return parsed(cell);
}

/**
 * A date as a spreadsheet holds it, as text that a date field of a form reads: "3/4/26" day first is "2026-04-03". Blank stays
 * blank, and what says unknown is "?". Nothing is guessed: an order not answered (`day-order-unclear`), the other order
 * (`date-other-order`), a birth in 1919 or 2019 (`birth-century-unclear`), "Apr-26" (`month-or-day-unclear`) and a spreadsheet's day
 * number (`day-number`) are refused.
 */
export function dateCell(cell: string, asked: Asked): Parsed<string> {
  const text = withoutClock(cell.trim());
  if (text === "") return parsed("");
  if (saysUnknown(text)) return parsed("?");
  if (DAY_NUMBER.test(text)) return unread("day-number", { text });
  const about = ABOUT.test(text);
  const bare = text.replace(ABOUT, "");
  const [, year, month, date] = YEAR_FIRST.exec(bare) ?? RUN_TOGETHER.exec(bare) ?? [];
  const numbers = numbersOf(bare);
  const read =
    year !== undefined
      ? parsed(`${year}-${two(Number(month))}-${two(Number(date))}`)
      : numbers === undefined
        ? fromWords(bare, asked)
        : fromNumbers(bare, numbers, asked);
  return read.ok && about ? parsed(`~${read.value}`) : read;
}
