import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import { readWhatCan, type Texts } from "#shared/record/field-spec.ts";
import type { ReadingBeside } from "#shared/record/output/reading-beside.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { doubtsByField } from "#shared/words/reading-doubts.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { noOutputYet } from "#tests/factories/reading-beside.ts";
import { readingDoubts } from "./reading-doubts.ts";

const at = (iso: string) => instant(Date.parse(iso));
const rate = (mlPer24h: number) => mlPer24h as MlPer24h;
const emptying = (to: string, from?: string) => ({
  from: from === undefined ? ("since last emptying" as const) : at(from),
  to: at(to),
  aspirate: false,
});

/** Emptied at 8:00 on 4, 5 and 6 Nov 2026, about 30 mL a day; it is Fri 6 Nov, 15:30 in London. */
const log: ReadingBeside = {
  ...noOutputYet,
  emptied: [emptying("2026-11-04T08:00Z"), emptying("2026-11-05T08:00Z"), emptying("2026-11-06T08:00Z")],
  days: [
    { day: day("2026-11-04"), mlPer24h: rate(28) },
    { day: day("2026-11-05"), mlPer24h: rate(32) },
  ],
};

function asked(typed: Texts, output: ReadingBeside = log) {
  const context = formContext({ output });
  const values = readWhatCan(readingForm.fields(context), { drained: "30", to: "now", ...typed });
  return readingDoubts(values, context);
}
const codes = (typed: Texts, output: ReadingBeside = log) => asked(typed, output).map(({ code }) => code);

describe("a volume (hard case 32: 1000 typed for 100)", () => {
  it.each([
    ["30", []],
    ["109", []],
    ["110", ["far-over-median"]],
    ["1000", ["far-over-median"]],
    ["1600", ["more-than-row", "far-over-median"]],
    ["~1000", ["far-over-median"]],
    ["?", []],
    ["40 oz", ["far-over-median"]],
  ] as const)("%s mL since 8:00 asks %j", (drained, doubts) => {
    expect(codes({ drained })).toEqual(doubts);
  });

  it("asks at one unit over the clinic's row and not at it: 5,000 mL in 24 h", () => {
    const texts = { from: "5 nov 15:30", to: "6 nov 15:30" };
    const noWeek = { ...log, days: [], emptied: [] };
    expect(codes({ ...texts, drained: "5000" }, noWeek)).toEqual([]);
    expect(codes({ ...texts, drained: "5001" }, noWeek)).toEqual(["more-than-row"]);
  });

  it("is held against the week before it, not against other weeks", () => {
    const long = { from: "5 nov 15:30", to: "6 nov 15:30", drained: "1000" };
    const with30 = (...days: string[]) => ({
      ...log,
      emptied: [],
      days: days.map((each) => ({ day: day(each), mlPer24h: rate(30) })),
    });
    expect(codes(long, with30("2026-10-30"))).toEqual(["far-over-median"]);
    expect(codes(long, with30("2026-10-29"))).toEqual([]);
    expect(codes(long, with30("2026-11-06"))).toEqual([]);
  });

  it("of an unknown start counts as a day's; net of the flush where that is given", () => {
    const none = { ...log, emptied: [], days: [] };
    expect(codes({ drained: "5000" }, none)).toEqual([]);
    expect(codes({ drained: "5050", flushGiven: "60" }, none)).toEqual([]);
    expect(codes({ drained: "5050", flushGiven: "?" }, none)).toEqual(["more-than-row"]);
  });

  it("asks nothing by a row that the protocol does not have, nor of what was drawn off at the procedure", () => {
    expect(codes({ drained: "90 l" }, { ...log, plausible: null })).toEqual([]);
    expect(codes({ drained: "1600", procedureAspirate: "yes" })).toEqual([]);
  });
});

describe("time that another reading speaks of", () => {
  it("a reading between two counts since the one before it, and the next since this one: nothing is asked", () => {
    expect(codes({ to: "5 nov 20:00" })).toEqual([]);
  });

  it("the same end twice is asked, whether its start is known or not", () => {
    expect(asked({ to: "6 nov 8:00" })).toEqual([
      { code: "overlaps", field: "to", from: at("2026-11-05T08:00Z"), to: at("2026-11-06T08:00Z") },
    ]);
    expect(asked({ to: "4 nov 8:00" })).toEqual([
      { code: "overlaps", field: "to", from: null, to: at("2026-11-04T08:00Z") },
    ]);
  });

  it("a start of its own that reaches into another names that one", () => {
    expect(asked({ to: "6 nov 12:00", from: "6 nov 7:00" })).toEqual([
      { code: "overlaps", field: "to", from: at("2026-11-05T08:00Z"), to: at("2026-11-06T08:00Z") },
    ]);
    expect(codes({ to: "6 nov 12:00", from: "6 nov 8:00" })).toEqual([]);
  });

  it("a reading that falls into one with a start of its own is asked; into an aspirate's it is not", () => {
    const own = { ...log, emptied: [emptying("2026-11-06T08:00Z", "2026-11-05T08:00Z")] };
    expect(codes({ to: "5 nov 20:00", from: "5 nov 12:00" }, own)).toEqual(["overlaps"]);
    const aspirate = { ...own, emptied: own.emptied.map((each) => ({ ...each, aspirate: true })) };
    expect(codes({ to: "5 nov 20:00", from: "5 nov 12:00" }, aspirate)).toEqual([]);
  });
});

describe("a time at which the tube did not lie there", () => {
  const alone = { ...log, emptied: [], days: [] };
  it.each([
    ["20 aug 0:10", []],
    ["19 aug 23:50", ["before-tube"]],
  ] as const)("a tube that is in since 20 Aug, a reading that ends %s: %j", (to, doubts) => {
    expect(codes({ to }, alone)).toEqual(doubts);
    expect(codes({ to }, { ...alone, inSince: null })).toEqual([]);
  });

  it.each([
    ["5 nov 23:50", []],
    ["6 nov 0:10", ["after-tube"]],
  ] as const)("a tube that was out by 5 Nov, a reading that ends %s: %j", (to, doubts) => {
    expect(codes({ to }, { ...alone, outBy: day("2026-11-05") })).toEqual(doubts);
  });
});

describe("flush far over the order, by the same row (hard case 28)", () => {
  it.each([
    ["110", "10 mL x 3 a day", []],
    ["111", "10 mL x 3 a day", ["flush-over-order"]],
    ["10 x 20", "10-20 mL x 2-4 a day", []],
    ["201", "10-20 mL x 2-4 a day", ["flush-over-order"]],
    ["100", "none", []],
    ["101", "none", ["flush-over-order"]],
    ["101", null, ["flush-over-order"]],
    ["none", null, []],
    ["?", null, []],
  ] as const)("%s mL where %j is ordered asks %j", (flushGiven, flushOrder, doubts) => {
    expect(codes({ flushGiven }, { ...log, flushOrder })).toEqual(doubts);
  });
});

it("nothing is asked where nothing is known of the tube's output, or while no time can be read", () => {
  expect(readingDoubts({ to: at("2026-11-06T08:00Z") }, formContext())).toEqual([]);
  expect(codes({ drained: "1600", to: "soon" })).toEqual([]);
});

it("every doubt is a question that quotes what it rests on", () => {
  const texts = { drained: "1600", to: "6 nov 8:00", flushGiven: "250" };
  const said = doubtsByField(asked(texts, { ...log, outBy: day("2026-11-05") }), formContext().zone);
  expect(said).toEqual({
    drained: "That is 1350 mL/24 h; this week's median is 30 mL/24 h. Is the volume right?",
    to: "The tube was out by Thu 5 Nov 2026. Is the date right, and the tube? Another reading runs from Thu 5 Nov 2026, 08:00 to Fri 6 Nov 2026, 08:00. Is this really another time?",
    flushGiven:
      "That is 250 mL of flush; ordered is 10 mL x 3 a day. Is the volume right, and is it flush and no other fluid?",
  });
  const early = asked({ to: "1 aug 8:00", flushGiven: "250" }, { ...log, flushOrder: null });
  expect(doubtsByField(early, formContext().zone)).toEqual({
    to: "The tube is known to lie there since Thu 20 Aug 2026. Is the date right?",
    flushGiven:
      "That is 250 mL of flush; no order is known. Is the volume right, and is it flush and no other fluid?",
  });
  const twice = asked({ to: "4 nov 8:00" });
  expect(doubtsByField(twice, formContext().zone).to).toBe(
    "Another reading ends Wed 4 Nov 2026, 08:00. Is this really not the same?",
  );
});
