import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarChanges, calendarEntries, daysClosed, inOrder } from "#shared/day/calendar-change.ts";
import { type ClinicCalendar, type Closure, fitWindow, type HalfDay } from "#shared/day/clinic-days.ts";
import { addDays, day, type Weekday } from "#shared/day/day.ts";

const audit: Closure = { from: day("2026-12-21"), to: day("2027-01-01"), reason: "audit" };
const works: Closure = { from: day("2026-11-02"), to: day("2026-11-02"), reason: "building work" };
const eve: HalfDay = { on: day("2026-12-18"), open: "morning", reason: "staff day" };
const plain: ClinicCalendar = { version: 1, openWeekdays: [1, 2, 3, 4, 5], closures: [] };

const anyDay = fc.integer({ min: 0, max: 500 }).map((away) => addDays(day("2026-06-01"), away));
const anyClosure = fc
  .record({ from: anyDay, length: fc.integer({ min: 0, max: 20 }), reason: fc.constantFrom("a", "b") })
  .map(({ from, length, reason }): Closure => ({ from, to: addDays(from, length), reason }));
const anyWeekdays = fc.uniqueArray(fc.constantFrom<Weekday>(1, 2, 3, 4, 5, 6, 7), { minLength: 1 });
const anyHalf: fc.Arbitrary<HalfDay> = fc.record({
  on: anyDay,
  open: fc.constantFrom("morning", "afternoon"),
  reason: fc.constant("half"),
});
const anyCalendar: fc.Arbitrary<ClinicCalendar> = fc.record({
  version: fc.constant(3),
  openWeekdays: anyWeekdays,
  closures: fc.array(anyClosure, { maxLength: 8 }),
  halfDays: fc.array(anyHalf, { maxLength: 4 }),
});
const anyWindow = fc.record({
  earliest: fc.option(anyDay),
  target: fc.option(anyDay),
  latest: fc.option(anyDay),
});

describe("how two calendars differ", () => {
  it("is told by what was taken away and what was added, weekdays first", () => {
    const after: ClinicCalendar = { version: 2, openWeekdays: [1, 3], closures: [audit], halfDays: [eve] };
    expect(calendarChanges({ ...plain, closures: [works] }, after)).toEqual([
      { code: "weekdays", from: [1, 2, 3, 4, 5], to: [1, 3] },
      { code: "no longer closed", closure: works },
      { code: "closed", closure: audit },
      { code: "half day", half: eve },
    ]);
    expect(calendarChanges(after, plain).map(({ code }) => code)).toEqual([
      "weekdays",
      "no longer closed",
      "no longer half day",
    ]);
  });

  it("another reason, another last day, another half are changes; another order is none", () => {
    const with_ = (closure: Closure): ClinicCalendar => ({ ...plain, closures: [closure] });
    for (const other of [
      { ...audit, reason: "works" },
      { ...audit, to: day("2027-01-02") },
    ])
      expect(calendarChanges(with_(audit), with_(other))).toHaveLength(2);
    const halves = (open: HalfDay["open"]): ClinicCalendar => ({ ...plain, halfDays: [{ ...eve, open }] });
    expect(calendarChanges(halves("morning"), halves("afternoon"))).toHaveLength(2);
    const both = { ...plain, openWeekdays: [5, 1] as const, closures: [audit, works] };
    const turned = { ...both, openWeekdays: [1, 5] as const, closures: [works, audit], halfDays: [] };
    expect(calendarChanges(both, turned)).toEqual([]);
  });
});

describe("laws", () => {
  it("a closure added and taken away leaves the calendar as it was", () => {
    fc.assert(
      fc.property(anyCalendar, anyClosure, (calendar, closure) => {
        const added = { ...calendar, closures: [...calendar.closures, closure] };
        const taken = { ...added, closures: added.closures.filter((one) => one !== closure) };
        expect(inOrder(taken)).toEqual(inOrder(calendar));
        expect(calendarChanges(calendar, taken)).toEqual([]);
      }),
    );
  });

  it("the order of closures, half days and weekdays changes no date", () => {
    fc.assert(
      fc.property(anyCalendar, anyWindow, (calendar, window) => {
        const turned: ClinicCalendar = {
          ...calendar,
          openWeekdays: calendar.openWeekdays.toReversed(),
          closures: calendar.closures.toReversed(),
          halfDays: calendar.halfDays?.toReversed(),
        };
        const days = (of: ClinicCalendar) => {
          const fitted = fitWindow(window, of);
          return fitted.kind === "fits" ? fitted.window : fitted.kind;
        };
        expect(days(turned)).toEqual(days(calendar));
        expect(days(inOrder(turned))).toEqual(days(calendar));
      }),
    );
  });

  it("half days change no date", () => {
    fc.assert(
      fc.property(anyCalendar, anyWindow, (calendar, window) => {
        expect(fitWindow(window, { ...calendar, halfDays: [] })).toEqual(fitWindow(window, calendar));
      }),
    );
  });
});

describe("the calendar in the order of its days", () => {
  it("holds what has not ended today as to come, and what is past with the newest on top", () => {
    const begun: Closure = { from: day("2026-11-25"), to: day("2026-11-30"), reason: "begun" };
    const ended: Closure = { from: day("2026-11-25"), to: day("2026-11-29"), reason: "ended" };
    const { coming, past } = calendarEntries(
      { ...plain, closures: [audit, begun, works, ended], halfDays: [eve] },
      day("2026-11-30"),
    );
    expect(coming.map(({ from }) => from)).toEqual(["2026-11-25", "2026-12-18", "2026-12-21"]);
    expect(past.map(({ from }) => from)).toEqual(["2026-11-25", "2026-11-02"]);
  });

  it("a closure counts both its ends", () => {
    expect(daysClosed(audit)).toBe(12);
    expect(daysClosed(works)).toBe(1);
  });
});
