import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addWorkingDays,
  type ClinicCalendar,
  fitWindow,
  isOpen,
  nextOpenDay,
  previousOpenDay,
} from "./clinic-days.ts";
import { clinicCalendarSchema } from "./clinic-days-schema.ts";
import { addDays, type Day, day, type Weekday, weekdayOf } from "./day.ts";

const closed = (from: string, reason: string, to = from) => ({ from: day(from), to: day(to), reason });
const calendar = (closures: ClinicCalendar["closures"]): ClinicCalendar => ({
  version: 1,
  openWeekdays: [1, 2, 3, 4, 5],
  closures,
});

/** 5 USC 6103: federal days off, as observed. */
const unitedStates = calendar([
  closed("2026-07-03", "Independence Day, observed"),
  closed("2026-12-25", "Christmas Day"),
  closed("2027-01-01", "New Year's Day"),
  closed("2027-06-18", "Juneteenth, observed"),
  closed("2027-07-05", "Independence Day, observed"),
  closed("2027-12-24", "Christmas Day, observed"),
  closed("2027-12-31", "New Year's Day 2028, observed"),
]);

/** The official bank-holiday file, England and Wales. */
const england = calendar([
  closed("2026-04-03", "Good Friday"),
  closed("2026-04-06", "Easter Monday"),
  closed("2026-12-25", "Christmas Day"),
  closed("2026-12-28", "Boxing Day, substitute"),
  closed("2027-01-01", "New Year's Day"),
  closed("2027-03-26", "Good Friday"),
  closed("2027-12-27", "Christmas Day, substitute"),
  closed("2027-12-28", "Boxing Day, substitute"),
]);

/** The official bank-holiday file, Scotland: no Easter Monday; 2026-06-15 once. */
const scotland = calendar([
  closed("2026-04-03", "Good Friday"),
  closed("2026-06-15", "World Cup bank holiday"),
  closed("2026-12-25", "Christmas Day"),
]);

const never: ClinicCalendar = { version: 1, openWeekdays: [], closures: [] };

describe("open days", () => {
  it.each([
    ["United States", unitedStates, "2027-12-31"],
    ["England", england, "2026-12-28"],
    ["Scotland", scotland, "2026-06-15"],
    ["any week", calendar([]), "2026-11-07"],
  ])("%s: shut on the day off", (_place, of, off) => {
    expect(isOpen(day(off), of)).toBe(false);
  });

  it("elsewhere the same day is open: holidays are the clinic's own list", () => {
    expect(isOpen(day("2026-06-15"), england)).toBe(true);
    expect(isOpen(day("2026-04-06"), scotland)).toBe(true);
  });

  it.each([
    ["2026-11-06", "2026-11-06", "2026-11-06"],
    ["2026-11-07", "2026-11-09", "2026-11-06"],
    ["2026-12-27", "2026-12-29", "2026-12-24"],
  ])("%s: next %s, previous %s", (of, next, previous) => {
    expect(nextOpenDay(day(of), england)).toBe(next);
    expect(previousOpenDay(day(of), england)).toBe(previous);
  });

  it("a closure of 400 days is passed, one of 900 and a clinic that never opens end the search", () => {
    const long = (days: number) =>
      calendar([closed("2026-01-05", "rebuilding", addDays(day("2026-01-05"), days - 1))]);
    expect(nextOpenDay(day("2026-01-05"), long(400))).toBe("2027-02-09");
    expect(nextOpenDay(day("2026-01-05"), long(900))).toBeNull();
    expect(previousOpenDay(day("2026-01-05"), never)).toBeNull();
    expect(addWorkingDays(day("2026-01-05"), 1_000_000, never)).toBeNull();
  });
});

describe("working days", () => {
  // Arithmetic from the two lists above.
  it.each([
    ["2026-04-02", 1, "United States", unitedStates, "2026-04-03"],
    ["2026-04-02", 1, "England", england, "2026-04-07"],
    ["2026-04-02", 1, "Scotland", scotland, "2026-04-06"],
    ["2026-12-22", 5, "United States", unitedStates, "2026-12-30"],
    ["2026-12-22", 5, "England", england, "2026-12-31"],
    ["2026-12-31", -5, "England", england, "2026-12-22"],
    ["2026-11-10", -2, "England", england, "2026-11-06"],
    ["2026-11-07", 0, "England", england, "2026-11-07"],
    ["2026-11-07", 1, "England", england, "2026-11-09"],
  ])("%s %i in the %s is %s", (from, count, _place, of, to) => {
    expect(addWorkingDays(day(from), count, of)).toBe(to);
  });
});

describe("a window", () => {
  const window = (earliest: string | null, target: string | null, latest: string | null) => ({
    earliest: earliest as Day | null,
    target: target as Day | null,
    latest: latest as Day | null,
  });

  it("on open days stays as it is, and what is missing stays missing", () => {
    for (const asked of [
      window("2026-11-02", null, "2026-11-06"),
      window("2026-11-02", "2026-11-02", "2026-11-02"),
      window(null, null, null),
    ]) {
      expect(fitWindow(asked, england)).toEqual({ kind: "fits", window: asked, moved: [] });
    }
  });

  it("hard case 24: a latest date inside a two-week closure is pulled forward, and says so", () => {
    const shut = calendar([closed("2026-08-03", "summer closure", "2026-08-16")]);
    expect(fitWindow(window("2026-07-20", "2026-08-05", "2026-08-12"), shut)).toEqual({
      kind: "fits",
      window: window("2026-07-20", "2026-07-31", "2026-07-31"),
      moved: [
        {
          end: "target",
          from: "2026-08-05",
          to: "2026-07-31",
          because: { code: "closure", reason: "summer closure" },
        },
        {
          end: "latest",
          from: "2026-08-12",
          to: "2026-07-31",
          because: { code: "closure", reason: "summer closure" },
        },
      ],
    });
  });

  it("an earliest on a Saturday moves to Monday, and a target before it goes along", () => {
    expect(fitWindow(window("2026-11-07", "2026-11-08", "2026-11-12"), england)).toEqual({
      kind: "fits",
      window: window("2026-11-09", "2026-11-09", "2026-11-12"),
      moved: [
        {
          end: "earliest",
          from: "2026-11-07",
          to: "2026-11-09",
          because: { code: "closed-weekday", weekday: 6 },
        },
        {
          end: "target",
          from: "2026-11-08",
          to: "2026-11-06",
          because: { code: "closed-weekday", weekday: 7 },
        },
        { end: "target", from: "2026-11-06", to: "2026-11-09", because: { code: "before-earliest" } },
      ],
    });
  });

  it("that lies wholly in a closure has no day left", () => {
    const shut = calendar([closed("2026-08-03", "summer closure", "2026-08-16")]);
    expect(fitWindow(window("2026-08-04", null, "2026-08-14"), shut)).toMatchObject({
      kind: "no day left",
      moved: [{ to: "2026-08-17" }, { to: "2026-07-31" }],
    });
  });

  it("of a clinic that never opens has no day left", () => {
    expect(fitWindow(window(null, "2026-08-04", null), never)).toMatchObject({
      kind: "no day left",
      moved: [{ end: "target", to: null }],
    });
  });

  it("that fits stands on open days inside what was asked, in order", () => {
    const away = fc.integer({ min: 0, max: 60 });
    const start = day("2026-01-01");
    const anyCalendar = fc.record({
      openWeekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }).map((weekday) => weekday as Weekday)),
      closures: fc.array(
        fc
          .tuple(away, away)
          .map(([a, b]) => ({ from: addDays(start, a), to: addDays(start, a + b), reason: "shut" })),
        { maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(fc.tuple(away, away, away), anyCalendar, (gaps, made) => {
        const earliest = addDays(start, gaps[0]);
        const target = addDays(earliest, gaps[1]);
        const latest = addDays(target, gaps[2]);
        const of = { version: 1, ...made };
        const fitted = fitWindow({ earliest, target, latest }, of);
        const openInside = Array.from({ length: gaps[1] + gaps[2] + 1 }, (_, n) =>
          addDays(earliest, n),
        ).filter((on) => isOpen(on, of));
        if (fitted.kind === "no day left") {
          expect(openInside).toEqual([]);
          return;
        }
        expect(fitted.window.earliest).toBe(openInside[0]);
        expect(fitted.window.latest).toBe(openInside.at(-1));
        expect(openInside).toContain(fitted.window.target);
      }),
    );
  });
});

describe("the calendar's schema", () => {
  it("takes a calendar and refuses one that ends before it starts, repeats a weekday or holds an invented day", () => {
    expect(clinicCalendarSchema.safeParse(england).success).toBe(true);
    const bad = (change: object) => clinicCalendarSchema.safeParse({ ...england, ...change }).success;
    expect(bad({ closures: [closed("2026-08-03", "x", "2026-08-02")] })).toBe(false);
    expect(bad({ closures: [{ from: "2026-02-30", to: "2026-03-01", reason: "x" }] })).toBe(false);
    expect(bad({ openWeekdays: [1, 1] })).toBe(false);
    expect(bad({ openWeekdays: [0] })).toBe(false);
    expect(bad({ version: 0 })).toBe(false);
    expect(bad({ note: "more" })).toBe(false);
  });
});

it("weekdays of the example: 6 November 2026 is a Friday", () => {
  expect(weekdayOf(day("2026-11-06"))).toBe(5);
});
