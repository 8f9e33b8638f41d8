import { describe, expect, it } from "vitest";
import { cropTo, listAxis, narrowAxis, placeOf, ticksOf } from "#app/strip/axis.ts";
import { drawStrip, type StripFacts } from "#app/strip/geometry.ts";
import { addDays, day } from "#shared/day/day.ts";

const today = day("2026-11-06");
const inDays = (days: number) => addDays(today, days);

/** 100 days, today in the middle: a day is one percent. */
const axis = { before: 50, after: 50 };

/** Placed 40 days ago; the window opens in 10 days, its target is in 20, its latest date in 30. */
const tube: StripFacts = {
  today,
  clockEarliest: inDays(-40),
  clockLatest: inDays(-40),
  outOn: null,
  earliest: inDays(10),
  target: inDays(20),
  latest: inDays(30),
  marks: [],
};

const draw = (facts: Partial<StripFacts>) => drawStrip({ ...tube, ...facts }, axis);

describe("the axis", () => {
  it("has today at the same place for every row", () => {
    expect(placeOf(0, listAxis)).toBe(62.5);
    expect(placeOf(0, narrowAxis)).toBe(50);
  });

  it("names every 30 days, counted from today", () => {
    const words = ticksOf(listAxis).map(({ word }) => word);
    expect(words).toEqual(["-120 d", "-90 d", "-60 d", "-30 d", "today", "+30 d", "+60 d"]);
    expect(ticksOf(narrowAxis).map(({ at }) => at)).toEqual([0, 50, 100]);
  });

  it("skips ticks on a long axis, and never today", () => {
    const ticks = ticksOf({ before: 700, after: 100 }, 9);
    expect(ticks.map(({ days }) => days)).toEqual([-630, -540, -450, -360, -270, -180, -90, 0, 90]);
  });

  it("is cropped to the 60 days around today without moving anything", () => {
    const { width, left } = cropTo(narrowAxis, listAxis);
    const seenAt = (days: number) => left + (placeOf(days, listAxis) / 100) * width;
    expect(seenAt(-30)).toBeCloseTo(0, 1);
    expect(seenAt(0)).toBeCloseTo(50, 1);
    expect(seenAt(30)).toBeCloseTo(100, 1);
  });
});

describe("the clock of a strip", () => {
  it("begins at its day, and the tube's age runs from there to today", () => {
    const { start, age, late } = draw({});
    expect(start).toEqual({ kind: "day", at: 10 });
    expect(age).toEqual({ from: 10, to: 50 });
    expect(late).toBeNull();
  });

  it.each([
    [-49, { kind: "day", at: 1 }],
    [-50, { kind: "day", at: 0 }],
    [-51, { kind: "before the axis" }],
  ])("that began %i days ago stands at its place, or before the axis", (days, start) => {
    const on = inDays(days);
    const drawn = draw({ clockEarliest: on, clockLatest: on });
    expect(drawn.start).toEqual(start);
    expect(drawn.age).toEqual({ from: Math.max(0, 50 + days), to: 50 });
  });

  it("known only to a span is that span, and the age that is certain runs from its last day", () => {
    const { start, age } = draw({ clockEarliest: inDays(-40), clockLatest: inDays(-10) });
    expect(start).toEqual({ kind: "span", from: 10, to: 40 });
    expect(age).toEqual({ from: 40, to: 50 });
  });

  it("whose span reaches over the left end is not drawn as a day", () => {
    const { start } = draw({ clockEarliest: inDays(-60), clockLatest: inDays(-45) });
    expect(start).toEqual({ kind: "span", from: -10, to: 5 });
  });

  it("that nobody knows draws no age, and the plan's dates all the same", () => {
    const drawn = draw({ clockEarliest: null, clockLatest: null, earliest: null, latest: inDays(20) });
    expect(drawn.start).toEqual({ kind: "unknown" });
    expect(drawn.age).toBeNull();
    expect(drawn.target).toBe(70);
  });

  it("started today has no line yet", () => {
    expect(draw({ clockEarliest: today, clockLatest: today }).age).toBeNull();
  });

  it("stops on the day on which the tube came out", () => {
    const { age, late } = draw({ outOn: inDays(-5), earliest: null, target: null, latest: inDays(-15) });
    expect(age).toEqual({ from: 10, to: 45 });
    expect(late).toEqual({ from: 35, to: 45 });
  });
});

describe("the window of a strip", () => {
  it("is hatched from earliest to target and open from target to latest", () => {
    const { hatched, open, target, latest } = draw({});
    expect(hatched).toEqual({ from: 60, to: 70 });
    expect(open).toEqual({ from: 70, to: 80 });
    expect({ target, latest }).toEqual({ target: 70, latest: 80 });
  });

  it("without an earliest day is not hatched", () => {
    const { hatched, open } = draw({ earliest: null });
    expect(hatched).toBeNull();
    expect(open).toEqual({ from: 70, to: 80 });
  });

  it("without a target is hatched up to latest", () => {
    const { hatched, open, target } = draw({ target: null });
    expect(hatched).toEqual({ from: 60, to: 80 });
    expect(open).toBeNull();
    expect(target).toBeNull();
  });

  it("is cut open where the axis ends, and its far date is not drawn at the edge", () => {
    const { hatched, open, latest } = draw({ earliest: inDays(40), target: inDays(60), latest: inDays(70) });
    expect(hatched).toEqual({ from: 90, to: 101 });
    expect(open).toBeNull();
    expect(latest).toBeNull();
  });

  it.each([
    [-50, 0],
    [-51, -1],
  ])("that opened %i days from today is cut open at the left end only when it is cut", (days, from) => {
    const { open } = draw({ earliest: null, target: inDays(days), latest: inDays(50) });
    expect(open).toEqual({ from, to: 100 });
  });

  it("beyond the axis draws nothing", () => {
    const { hatched, open, target, latest } = draw({
      earliest: inDays(51),
      target: inDays(60),
      latest: inDays(70),
    });
    expect([hatched, open, target, latest]).toEqual([null, null, null, null]);
  });

  it.each([
    [1, null],
    [0, null],
    [-1, { from: 49, to: 50 }],
    [-60, { from: 10, to: 50 }],
  ])(
    "with its latest date in %i days is late from then on, and never before the clock began",
    (days, late) => {
      expect(draw({ earliest: null, target: null, latest: inDays(days) }).late).toEqual(late);
    },
  );
});

describe("the marks of a strip", () => {
  it("are one diamond a day, in the order of days, each kind once", () => {
    const { marks } = draw({
      marks: [
        { on: inDays(-10), kind: "capped" },
        { on: inDays(-20), kind: "checked" },
        { on: inDays(-10), kind: "checked" },
        { on: inDays(-10), kind: "capped" },
      ],
    });
    expect(marks).toEqual([
      { on: inDays(-20), at: 30, kinds: ["checked"] },
      { on: inDays(-10), at: 40, kinds: ["capped", "checked"] },
    ]);
  });

  it("before the axis are left out", () => {
    expect(draw({ marks: [{ on: inDays(-51), kind: "checked" }] }).marks).toEqual([]);
  });
});
