import { type Day, daysBetween, weekdayOf } from "#shared/day/day.ts";
import { clockText, dayAt, type Instant, turnOf, type Zone } from "#shared/day/instant.ts";
import type { When } from "#shared/day/when.ts";

/** Own tables of names: the machine's language and its habits must not change what a page or a file says. */
export const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
export const weekdayNames = [
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
  "Sunday",
] as const;

const yearOf = (of: Day): string => of.slice(0, 4);
const monthName = (of: Day): string => monthNames[Number(of.slice(5, 7)) - 1] ?? "";
/** `6 Nov`: where the year is plain. */
export const printDate = (of: Day): string => `${Number(of.slice(8, 10))} ${monthName(of).slice(0, 3)}`;

/** `Fri 6 Nov 2026`. */
export const printDay = (of: Day): string =>
  `${weekdayNames[weekdayOf(of) - 1]?.slice(0, 3)} ${printDate(of)} ${yearOf(of)}`;

/** `Friday 6 November 2026`: for whoever reads it on a paper at home. */
export const printWholeDay = (of: Day): string =>
  `${weekdayNames[weekdayOf(of) - 1]} ${Number(of.slice(8, 10))} ${monthName(of)} ${yearOf(of)}`;

/** `3 Apr 1961`: of a birth, which nobody looks up by its weekday. */
export const printBirth = (of: Day): string => `${printDate(of)} ${yearOf(of)}`;

/** `Fri 6 Nov 2026, 14:05`, by the clock of that zone. */
export const printInstant = (at: Instant, where: Zone): string =>
  `${printDay(dayAt(at, where))}, ${clockText(at, where)}`;

/** The same as it can be typed again: "later" stands after an hour that came twice, where it was the second. */
export const printMoment = (at: Instant, where: Zone): string =>
  turnOf(at, where) === "later" ? `${printInstant(at, where)}, later` : printInstant(at, where);

function printSpan(earliest: Day, latest: Day): string {
  if (earliest === latest) return `about ${printDay(earliest)}`;
  const end = `${printDate(latest)} ${yearOf(latest)}`;
  if (yearOf(earliest) !== yearOf(latest)) return `${printDate(earliest)} ${yearOf(earliest)} to ${end}`;
  return `${earliest.slice(0, 7) === latest.slice(0, 7) ? Number(earliest.slice(8, 10)) : printDate(earliest)} to ${end}`;
}

/** `Fri 6 Nov 2026`, `March 2026`, `2025`, `14 to 20 Nov 2026`, `about Fri 6 Nov 2026` (a span of one day), `unknown date`. */
export function printWhen(when: When): string {
  switch (when.precision) {
    case "day":
      return printDay(when.earliest);
    case "month":
      return `${monthName(when.earliest)} ${yearOf(when.earliest)}`;
    case "year":
      return yearOf(when.earliest);
    case "span":
      return printSpan(when.earliest, when.latest);
    case "unknown":
      return "unknown date";
  }
}

/** `in 3 days`, `tomorrow`, `today`, `yesterday`, `11 days ago`. */
export function printDistance(of: Day, today: Day): string {
  const days = daysBetween(today, of);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}
