import { describe, expect, it } from "vitest";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { day } from "#shared/day/day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type CalendarAsked, calendarAsked } from "#shared/record/calendar/asked.ts";
import { closingForm } from "#shared/record/calendar/closing-form.ts";
import { halfDayForm } from "#shared/record/calendar/half-day-form.ts";
import { weekdaysForm } from "#shared/record/calendar/weekdays-form.ts";
import type { FormResult } from "#shared/record/form.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

/** A Monday. */
const today = day("2026-11-30");
const audit = { from: day("2026-12-21"), to: day("2027-01-01"), reason: "audit" };
const eve = { on: day("2026-12-18"), open: "morning", reason: "staff day" } as const;
const calendar: ClinicCalendar = {
  version: 4,
  openWeekdays: [1, 2, 3, 4, 5],
  closures: [audit],
  halfDays: [eve],
};

const close = (texts: Record<string, string>, moves: typeof audit | null = null) =>
  closingForm.read({ reason: "building work", ...texts }, { today, calendar, moves });
const half = (texts: Record<string, string>, moves: typeof eve | null = null) =>
  halfDayForm.read({ open: "morning", reason: "course", ...texts }, { today, calendar, moves });

/** The field that each sentence stands beside. */
function sentences(read: FormResult<unknown>): readonly string[] {
  const refusals: readonly Refusal[] = read.ok ? [] : read.refusals;
  return refusals.map((refusal) => `${refusal.field}: ${refusalSentence(refusal)}`);
}

describe("closing the clinic", () => {
  it("takes dates as people type them; a blank last day means one day", () => {
    expect(close({ from: "7 dec", to: "+11" })).toEqual({
      ok: true,
      entry: { from: "2026-12-07", to: "2026-12-11", reason: "building work" },
    });
    expect(close({ from: "tomorrow", to: "" })).toMatchObject({
      ok: true,
      entry: { from: "2026-12-01", to: "2026-12-01" },
    });
  });

  it("that ends before it starts is asked again beside its last day", () => {
    expect(sentences(close({ from: "11 dec 2026", to: "7 dec 2026" }))).toEqual([
      "to: The closure ends before it starts. Check both days.",
    ]);
  });

  it("of 400 days is asked again with its length; 366 are taken", () => {
    expect(sentences(close({ from: "2 jan 2027", to: "2028-02-05" }))).toEqual([
      "to: This is a closure of 400 days; one closure has at most 366. Check the year of both days, or change the open weekdays instead.",
    ]);
    expect(close({ from: "2 jan 2027", to: "2028-01-02" }).ok).toBe(true);
    expect(close({ from: "2 jan 2027", to: "2028-01-03" }).ok).toBe(false);
  });

  it("wholly in the past is asked again; one that has begun is taken", () => {
    expect(sentences(close({ from: "2026-11-25", to: "2026-11-27" }))).toEqual([
      "to: This closure ended on Fri 27 Nov 2026, and what is past touches no date. Type a last day that is still to come.",
    ]);
    expect(close({ from: "2026-11-25", to: "today" }).ok).toBe(true);
  });

  it("over one that stands says which", () => {
    const said =
      "from: The clinic is closed Mon 21 Dec 2026 to Fri 1 Jan 2027 already: audit. Move that closure, or leave its days out of this one.";
    expect(sentences(close({ from: "14 dec", to: "21 dec" }))).toEqual([said]);
    expect(sentences(close({ from: "1 jan 2027" }))).toEqual([said]);
    expect(close({ from: "14 dec", to: "20 dec" }).ok).toBe(true);
    expect(close({ from: "2 jan 2027" }).ok).toBe(true);
  });

  it("moved, may lie over where it stood, and opens with what stands", () => {
    expect(close({ from: "22 dec", to: "24 dec" }, audit).ok).toBe(true);
    const fields = closingForm.fields({ today, calendar, moves: audit });
    expect([fields.from.initial, fields.to.initial, fields.reason.initial]).toEqual([
      "Mon 21 Dec 2026",
      "Fri 1 Jan 2027",
      "audit",
    ]);
  });

  it("without a reason, or without a day, says which is missing", () => {
    expect(sentences(close({ from: "", reason: " " }))).toEqual([
      "from: Type the first day.",
      "reason: Type why the clinic is closed.",
    ]);
  });
});

describe("half a day", () => {
  it("is taken on an open day, by the short words for its half", () => {
    expect(half({ on: "4 dec", open: "pm" })).toEqual({
      ok: true,
      entry: { on: "2026-12-04", open: "afternoon", reason: "course" },
    });
  });

  it.each([
    ["on a closed day", "22 dec", "The clinic is closed on Tue 22 Dec 2026: audit."],
    [
      "on a day that is no open weekday",
      "5 dec",
      "Sat 5 Dec 2026 is a Saturday, on which the clinic is not open.",
    ],
    ["in the past", "2026-11-27", "Fri 27 Nov 2026 is past."],
    ["where one stands", "18 dec", "Fri 18 Dec 2026 is half a day already, open in the morning: staff day."],
  ])("%s is asked again beside its day", (_where, on, said) => {
    const [sentence] = sentences(half({ on }));
    expect(sentence).toContain(`on: ${said}`);
  });

  it("moved to its own day with the other half is taken", () => {
    expect(half({ on: "18 dec", open: "afternoon" }, eve).ok).toBe(true);
  });

  it("without a reason says so", () => {
    expect(sentences(half({ on: "4 dec", reason: "" }))).toEqual([
      "reason: Type why the other half is closed.",
    ]);
  });
});

describe("open weekdays", () => {
  it("are typed in short; none at all is asked again", () => {
    expect(weekdaysForm.read({ openWeekdays: "mon wed fri" }, { calendar })).toEqual({
      ok: true,
      entry: { openWeekdays: [1, 3, 5] },
    });
    expect(sentences(weekdaysForm.read({ openWeekdays: "" }, { calendar }))).toEqual([
      "openWeekdays: The clinic is open on at least one day of the week. Type it like mon-fri.",
    ]);
    expect(sentences(weekdaysForm.read({ openWeekdays: "mon-fry" }, { calendar }))).toEqual([
      'openWeekdays: "mon-fry" is not understood as days of the week. Type them like mon-fri, or mon wed fri.',
    ]);
    expect(weekdaysForm.fields({ calendar }).openWeekdays.initial).toBe("Monday to Friday");
  });
});

describe("what is asked of the calendar", () => {
  const asked = (change: CalendarAsked) => calendarAsked(change, { calendar, today });

  it("moves a closure in place of the one that stood", () => {
    const texts = { from: "22 dec", to: "24 dec", reason: "audit" };
    expect(asked({ kind: "close", texts, moves: audit.from }).closures).toEqual([
      { from: "2026-12-22", to: "2026-12-24", reason: "audit" },
    ]);
  });

  it("moves a half day in place of the one that stood", () => {
    const texts = { on: "17 dec", open: "afternoon", reason: "course" };
    expect(asked({ kind: "open half a day", texts, moves: eve.on }).halfDays).toEqual([
      { on: "2026-12-17", open: "afternoon", reason: "course" },
    ]);
  });

  it("takes away what is named, and nothing else", () => {
    expect(asked({ kind: "take a closure away", from: audit.from })).toEqual({ ...calendar, closures: [] });
    expect(asked({ kind: "take a half day away", on: eve.on })).toEqual({ ...calendar, halfDays: [] });
  });

  it("of what no longer stands is refused: the page is old", () => {
    const gone = day("2026-12-22");
    const texts = { from: "22 dec", on: "17 dec", open: "morning", reason: "audit" };
    const changes: readonly CalendarAsked[] = [
      { kind: "take a closure away", from: gone },
      { kind: "take a half day away", on: gone },
      { kind: "close", texts, moves: gone },
      { kind: "open half a day", texts, moves: gone },
    ];
    for (const change of changes)
      expect(refusalsOf(() => asked(change))).toMatchObject([{ code: "calendar-changed" }]);
  });

  it("adds holidays as closures of one day; one on a day that is closed already stays the clinic's", () => {
    const days = [
      { on: day("2026-12-25"), name: "Christmas Day" },
      { on: day("2027-03-26"), name: "Good Friday" },
    ];
    expect(asked({ kind: "holidays", days }).closures).toEqual([
      audit,
      { from: "2027-03-26", to: "2027-03-26", reason: "Good Friday" },
    ]);
  });

  it("refuses a holiday that is past", () => {
    const days = [{ on: day("2026-11-26"), name: "Thanksgiving Day" }];
    expect(refusalsOf(() => asked({ kind: "holidays", days }))).toMatchObject([{ code: "closure-past" }]);
  });
});
