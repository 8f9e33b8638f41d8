import { describe, expect, it } from "vitest";
import { netDaySeries } from "#tests/factories/net-day.ts";
import { trendOf } from "./trend.ts";

function spanOf(values: readonly (number | null)[], row: { lowNetMl: number } | null = { lowNetMl: 10 }) {
  const trend = trendOf(netDaySeries(values), row);
  if (trend.kind === "no days") throw new Error("no days");
  return trend.ifUnchanged;
}

/*
 * Days from 1 Nov 2026. Each was worked apart, in fractions: anchor (median day, median net), the interval's two slopes, and the day
 * after each crossing of the row.
 */
describe("six fixed series with a span", () => {
  it.each([
    // Through (3, 96): 86 / 9.5 = 9.05 to 86 / 7.5 = 11.47 days on.
    [[120, 112, 101, 96, 84, 80, 69], 10, "2026-11-14", "2026-11-16"],
    // Through (2, 110): 100 / 50 = 2 to 100 / 30 = 3.33 days on.
    [[200, 150, 110, 60, 30], 10, "2026-11-06", "2026-11-07"],
    // Days 0 2 3 6 7 8, through (4.5, 63): 53 / 7 = 7.57 to 53 / 5 = 10.6.
    [[90, null, 80, 74, null, null, 52, 47, 40], 10, "2026-11-14", "2026-11-17"],
    // Through (4.5, 49.5): 39.5 / (19/7) = 14.55 to 39.5 / (7/3) = 16.93.
    [[60, 57, 57, 52, 50, 49, 45, 43, 40, 38], 10, "2026-11-21", "2026-11-23"],
    // Through (3, 27): 17 / 5 = 3.4 to 17 / 3.5 = 4.86.
    [[40, 35, 33, 27, 24, 18, 15], 10, "2026-11-08", "2026-11-09"],
    // Another row: through (3, 66): 36 / 5.5 = 6.55 to 36 / (14/3) = 7.71.
    [[80, 76, 70, 66, 61, 55, 50], 30, "2026-11-11", "2026-11-12"],
  ] as const)("%j under %d: %s to %s", (values, lowNetMl, from, to) => {
    expect(spanOf(values, { lowNetMl })).toEqual({ kind: "span", from, to, lowNetMl });
  });
});

describe("three fixed series with none", () => {
  it.each([
    ["interval-holds-zero", [50, 48, 53, 49, 51, 50]],
    ["already-under", [40, 30, 20, 12, 6, 2]],
    // 43.5 / (10/3) = 13.05 to 43.5 / 0.5 = 87 days on.
    ["too-wide", [60, 55, 58, 50, 57, 48, 52, 47]],
  ] as const)("%s: %j", (because, values) => {
    expect(spanOf(values)).toEqual({ kind: "none", because });
  });
});

describe("no span", () => {
  it("without a row, or of too few days for an interval", () => {
    expect(spanOf([50, 40, 30, 20, 15], null)).toEqual({ kind: "none", because: "no-row" });
    expect(spanOf([50, 40, 30, 20])).toEqual({ kind: "none", because: "too-few-days" });
    expect(spanOf([50, 40, 30])).toEqual({ kind: "none", because: "too-few-days" });
  });

  it("of what rises", () => {
    expect(spanOf([20, 25, 31, 36, 40])).toEqual({ kind: "none", because: "rising" });
  });

  it("that ends more than 28 days after the last day", () => {
    // Falls by 1 a day to 37 on 6 Nov: at the row on 3 Dec, under it from 4 Dec, 28 days on; told to the 5th, which is a day too far.
    const falling = (last: number) => [5, 4, 3, 2, 1, 0].map((more) => last + more);
    expect(spanOf(falling(37))).toEqual({ kind: "none", because: "too-far" });
    expect(spanOf(falling(36))).toMatchObject({ kind: "span", from: "2026-12-03", to: "2026-12-04" });
  });

  it("that is wider than 14 days", () => {
    // Through (2, 60), slopes -10 and -2.5. Row 14: 4.6 and 18.4 days on, the 8th to the 22nd. Row 12: 4.8 and 19.2, to the 23rd.
    const days = [72.5, 62.5, 60, 57.5, 47.5];
    expect(spanOf(days, { lowNetMl: 14 })).toMatchObject({ from: "2026-11-08", to: "2026-11-22" });
    expect(spanOf(days, { lowNetMl: 12 })).toEqual({ kind: "none", because: "too-wide" });
  });

  it("of days that went silent more than three days ago", () => {
    const days = [120, 112, 101, 96, 84, 80, 69];
    expect(spanOf([...days, null, null, null])).toMatchObject({ from: "2026-11-14", to: "2026-11-16" });
    expect(spanOf([...days, null, null, null, null])).toEqual({ kind: "none", because: "days-too-old" });
  });
});

describe("a span", () => {
  it("has two days at the least: a straight line names no one day", () => {
    // 100 - 10 a day: at the row on day 9, under it on day 10.
    expect(spanOf([100, 90, 80, 70, 60, 50])).toMatchObject({ from: "2026-11-11", to: "2026-11-12" });
  });

  it("begins no earlier than today, and is none when all of it is past", () => {
    // Alone it is the 6th to the 7th.
    expect(spanOf([200, 150, 110, 60, 30, null])).toMatchObject({ from: "2026-11-06", to: "2026-11-07" });
    expect(spanOf([200, 150, 110, 60, 30, null, null])).toMatchObject({
      from: "2026-11-07",
      to: "2026-11-08",
    });
    expect(spanOf([200, 150, 110, 60, 30, null, null, null])).toEqual({
      kind: "none",
      because: "days-too-old",
    });
  });

  it("is told while the line stands at the row, and not under it", () => {
    // Straight: 15 on day 5 by 5 a day.
    expect(spanOf([40, 35, 30, 25, 20, 15], { lowNetMl: 15 })).toMatchObject({
      kind: "span",
      from: "2026-11-07",
    });
    expect(spanOf([40, 35, 30, 25, 20, 15], { lowNetMl: 15.001 })).toEqual({
      kind: "none",
      because: "already-under",
    });
  });
});
