import { describe, expect, it } from "vitest";
import { millilitres } from "./microlitre.ts";
import { plausibility } from "./plausible.ts";
import { HOUR_MS, type MlPer24h, ratePer24h } from "./rate.ts";

const week = (...rates: number[]) => rates as MlPer24h[];
/** The example row: practice, no source. */
const row = { overMlPer24h: 5000 as MlPer24h, overTimesMedian: 10, andMoreMl: 100 };
const asked = (ml: number, hours: number, rates = week()) =>
  plausibility({ volume: millilitres(ml), overMs: hours * HOUR_MS, week: rates }, row);

describe("a rate", () => {
  it("31 hours with 62 mL are 48 mL/24 h (arithmetic)", () => {
    expect(ratePer24h(millilitres(62), 31 * HOUR_MS)).toBe(48);
  });

  it.each([0, -1, Number.NaN])("is none over %s", (overMs) => {
    expect(() => ratePer24h(millilitres(62), overMs)).toThrow(RangeError);
  });
});

describe("hard case 32: an entry is asked about, never cut", () => {
  it.each([
    [4999, 24, "plausible"],
    [5000, 24, "plausible"],
    [5001, 24, "ask"],
    [2501, 12, "ask"],
    [5000, 48, "plausible"],
    [-30, 24, "plausible"],
  ])("%i mL in %i hours without a history: %s", (ml, hours, kind) => {
    expect(asked(ml, hours).kind).toBe(kind);
  });

  it("1000 typed for 100", () => {
    expect(asked(1000, 24, week(95, 90, 100, 110, 85))).toEqual({
      kind: "ask",
      doubts: [{ code: "far-over-median", mlPer24h: 1000, medianMlPer24h: 95 }],
    });
  });

  it.each([
    ["at ten times the median", 1000, week(100), "plausible"],
    ["above it", 1001, week(100), "ask"],
    ["ten times a drop is not 100 mL more", 100, week(0, 2, 4), "plausible"],
    ["102 mL more is", 104, week(0, 2, 4), "ask"],
    ["the median of an even week is the middle of two", 1000, week(90, 100), "ask"],
    ["an empty week asks nothing", 4000, week(), "plausible"],
  ])("%s", (_what, ml, rates, kind) => {
    expect(asked(ml, 24, rates).kind).toBe(kind);
  });

  it.each([
    ["30 mL two hours after the last emptying", 30, 2, "plausible"],
    ["100 mL more than the 2.5 mL that are usual in two hours", 102.5, 2, "plausible"],
    ["and a drop over that", 103, 2, "ask"],
  ])("%s by volume, not by the rate of an hour or two", (_what, ml, hours, kind) => {
    expect(asked(ml, hours, week(30)).kind).toBe(kind);
  });

  it("80 mL in the first 20 minutes are not five litres a day: less than an hour is taken as one", () => {
    expect(asked(80, 1 / 3).kind).toBe("plausible");
  });
});
