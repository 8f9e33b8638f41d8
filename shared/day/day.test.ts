import fc from "fast-check";
import { DateTime } from "luxon";
import { describe, expect, it } from "vitest";
import {
  addDays,
  addMonths,
  day,
  daysBetween,
  earlier,
  isDay,
  isoWeek,
  lastOfMonth,
  later,
  weekdayOf,
} from "./day.ts";

/** Any day from 1900 to 2199. */
const anyDay = fc.integer({ min: 0, max: 109_571 }).map((away) => addDays(day("1900-01-01"), away));

/** A second calendar library, asked in UTC. */
const luxon = (text: string) => DateTime.fromISO(text, { zone: "utc" });

describe("a day", () => {
  it.each(["2026-02-28", "2028-02-29", "1900-01-01", "2199-12-31"])("%s exists", (text) => {
    expect(isDay(text)).toBe(true);
  });

  it.each([
    "2026-02-29",
    "1900-02-29",
    "2026-13-01",
    "2026-00-10",
    "2026-04-31",
    "1899-12-31",
    "2200-01-01",
    "0026-01-01",
    "2026-1-1",
    "2026-01-01T00:00",
    "",
  ])("%s does not", (text) => {
    expect(isDay(text)).toBe(false);
    expect(() => day(text)).toThrow(RangeError);
  });

  it("has an order that is the order of its text", () => {
    expect(earlier(day("2026-09-30"), day("2026-10-01"))).toBe("2026-09-30");
    expect(later(day("2026-09-30"), day("2026-10-01"))).toBe("2026-10-01");
  });
});

describe("ISO weeks", () => {
  // ISO 8601 week dates: 2026 has 53 weeks. Arithmetic from the definition of the week.
  it.each([
    ["2026-12-31", "2026-W53-4"],
    ["2027-01-03", "2026-W53-7"],
    ["2027-01-04", "2027-W01-1"],
    ["2028-01-01", "2027-W52-6"],
  ])("%s is %s", (of, week) => {
    expect(isoWeek(day(of))).toBe(week);
  });

  it("agree with luxon, as do weekdays", () => {
    fc.assert(
      fc.property(anyDay, (of) => {
        expect(isoWeek(of)).toBe(luxon(of).toISOWeekDate());
        expect(weekdayOf(of)).toBe(luxon(of).weekday);
      }),
    );
  });
});

describe("months", () => {
  it.each([
    // date-fns tests, addMonths.
    ["2014-12-31", 2, "2015-02-28"],
    // Arithmetic: the last day of the shorter month.
    ["2026-01-31", 3, "2026-04-30"],
    ["2028-02-29", 12, "2029-02-28"],
    ["2026-11-30", 3, "2027-02-28"],
    ["2026-03-31", -1, "2026-02-28"],
    ["2026-01-15", -13, "2024-12-15"],
  ])("%s + %i months is %s", (from, months, to) => {
    expect(addMonths(day(from), months)).toBe(to);
  });

  it("are added from the anchor: twice one month is not two", () => {
    const anchor = day("2026-01-31");
    expect(addMonths(addMonths(anchor, 1), 1)).toBe("2026-03-28");
    expect(addMonths(anchor, 2)).toBe("2026-03-31");
  });

  it("do not lean on the machine's zone, which may have left a day out", () => {
    // IANA time zone database: Kiritimati had no 1994-12-31 (older editions: no 1995-01-01).
    expect(addMonths(day("1994-11-30"), 1)).toBe("1994-12-30");
    expect(addMonths(day("1994-10-31"), 2)).toBe("1994-12-31");
    expect(addMonths(day("1994-12-01"), 1)).toBe("1995-01-01");
  });

  it("agree with luxon", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -240, max: 240 }), (of, months) => {
        expect(addMonths(of, months)).toBe(luxon(of).plus({ months }).toISODate());
      }),
    );
  });

  it.each([
    [2026, 2, "2026-02-28"],
    [2028, 2, "2028-02-29"],
    [2026, 12, "2026-12-31"],
  ])("month %i-%i ends on %s", (year, month, end) => {
    expect(lastOfMonth(year, month)).toBe(end);
  });
});

describe("days", () => {
  it.each([
    // Arithmetic.
    ["2026-11-30", 84, "2027-02-22"],
    ["2026-08-14", 77, "2026-10-30"],
    // 90 days across the clock changes of New York (2026-11-01) and London (2027-03-28) shift no date.
    ["2026-09-15", 90, "2026-12-14"],
    ["2027-01-15", 90, "2027-04-15"],
    ["2026-03-01", -1, "2026-02-28"],
  ])("%s + %i days is %s", (from, days, to) => {
    expect(addDays(day(from), days)).toBe(to);
    expect(daysBetween(day(from), day(to))).toBe(days);
  });

  it("agree with luxon and come back", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -3000, max: 3000 }), (of, days) => {
        const moved = addDays(of, days);
        expect(moved).toBe(luxon(of).plus({ days }).toISODate());
        expect(addDays(moved, -days)).toBe(of);
      }),
    );
  });
});
