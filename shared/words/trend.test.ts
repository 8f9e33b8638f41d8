import { describe, expect, it } from "vitest";
import { countableDays } from "#shared/output/trend/countable-days.ts";
import { noHalfLifeReasons } from "#shared/output/trend/half-life.ts";
import { type LowRow, noSpanReasons } from "#shared/output/trend/if-unchanged.ts";
import { trendOf } from "#shared/output/trend/trend.ts";
import { netDayOf, netDaySeries } from "#tests/factories/net-day.ts";
import {
  fallWords,
  halfLifeWords,
  ifUnchangedWords,
  kendallWords,
  leftOutLines,
  lineWords,
  noTrendWords,
  usedWords,
} from "./trend.ts";

function toldOf(values: readonly (number | null)[], row: LowRow | null = { lowNetMl: 10 }) {
  const trend = trendOf(netDaySeries(values), row);
  if (trend.kind === "no days") throw new Error("no days");
  return trend;
}

describe("the days of a trend, in words", () => {
  it("are counted and dated", () => {
    const used = (values: readonly (number | null)[]) => usedWords(countableDays(netDaySeries(values)));
    expect(used([5, null, 4])).toBe("2 days, from Sun 1 Nov 2026 to Tue 3 Nov 2026.");
    expect(used([5])).toBe("1 day, Sun 1 Nov 2026.");
    expect(used([null])).toBe("No day can be counted on.");
  });

  it("that were left out stand under their reason, many as a span", () => {
    const earlier = netDaySeries([9, 9, 9, 9, 9]);
    const since = [
      netDayOf("2026-11-06", 9, { segment: 1, remarks: ["leak-round-tube"] }),
      netDayOf("2026-11-07", 9, { segment: 1 }),
    ];
    expect(leftOutLines(countableDays([...earlier, ...since]))).toEqual([
      "Before the last change of size, mode, suction or position. 5 days from Sun 1 Nov 2026 to Thu 5 Nov 2026.",
      "It leaks round the tube: some of the output is not in the figure. Fri 6 Nov 2026.",
    ]);
  });
});

describe("a trend, in words", () => {
  const told = toldOf([120, 112, 101, 96, 84, 80, 69]);

  it("says the slope with its interval, and its arithmetic", () => {
    expect(lineWords(told.line)).toEqual({
      says: "The net falls by 8 mL/24 h a day; 95 % interval -9.5 mL/24 h to -7.5 mL/24 h a day.",
      sum: "The median of 21 slopes between two days each; the line goes through the medians, 96 mL/24 h on day 4. The interval runs from slope 4 of 21 to slope 18, by a variance of 44.3.",
    });
    expect(lineWords(toldOf([1, 2, 3, 4]).line).says).toBe(
      "The net rises by 1 mL/24 h a day. No 95 % interval: too few days.",
    );
    expect(lineWords(toldOf([4, 4, 4, 4, 4]).line).says).toContain("The net neither rises nor falls;");
  });

  it("says how rare it would be, and how S was counted", () => {
    expect(kendallWords(told.kendall)).toEqual({
      says: "Without any trend, days would rise or fall as steadily as this in under 1 of 1,000 series (p 0.0004).",
      sum: "Mann-Kendall. 21 pairs of 7 days, rising less falling: S -21, variance 44.3. Two-sided, by the exact distribution of S.",
    });
    expect(kendallWords(toldOf([9, 8, 7, 6, 5, 4, 3, 2, 1]).kendall).says).toContain("(p under 0.0001)");
    const tied = kendallWords(toldOf([100, 100, 100, 20, 20]).kendall);
    expect(tied.sum).toContain("S -6, variance 12, ties of 3, 2. Z -1.443, two-sided, by the bell curve");
    expect(tied.says).toContain("in 15 of 100 series (p 0.1489)");
    expect(kendallWords(toldOf([5, 4, 3, 2]).kendall).says).toContain("in 83 of 1,000 series (p 0.0833)");
  });

  it("says the half-life, or why there is none", () => {
    expect(halfLifeWords(toldOf([320, 160, 80, 20, 10]).halfLife)).toEqual({
      says: "It halves in 0.8 days; 95 % interval 0.5 to 1 days.",
      sum: "The median line through the logarithms: ln 2 over 0.895 a day.",
    });
    for (const because of noHalfLifeReasons)
      expect(halfLifeWords({ kind: "none", because }).says).toMatch(/^None: /);
  });

  it.each([
    [
      [100, 98, 100, 30, 28, 26],
      "Sudden: by 70 mL/24 h from Tue 3 Nov 2026 to Wed 4 Nov 2026, of 72 mL/24 h in all.",
      "Median of the first 2 days 99 mL/24 h, of the last 2 days 27 mL/24 h. Half of that or more",
    ],
    [[100, 88, 76, 64, 52, 40], "Gradual: by 48 mL/24 h in all.", "Nowhere half of that"],
    [
      [100, 98, 100, null, 30, 28, 26],
      "Cannot tell whether sudden or gradual: days are missing between Tue 3 Nov 2026 and Thu 5 Nov 2026, where it fell by 70 mL/24 h.",
      "Median of the first 2 days",
    ],
    [[10, 20, 30, 40, 50], "No fall.", "Not every day"],
    [[10, 9, 8], "Cannot tell: under 5 days.", ""],
  ] as const)("of %j says its fall: %s", (values, says, sum) => {
    expect(fallWords(toldOf(values).fall)).toEqual({ says, sum: expect.stringContaining(sum) });
  });

  it("says a span of days if unchanged, never one, and a reason for none", () => {
    expect(ifUnchangedWords(told.ifUnchanged).says).toBe(
      "If unchanged, the median line goes under 10 mL/24 h between Sat 14 Nov 2026 and Mon 16 Nov 2026.",
    );
    for (const because of noSpanReasons)
      expect(ifUnchangedWords({ kind: "none", because }).says).toMatch(/^No span: /);
  });

  it("says why there is nothing to tell", () => {
    expect(noTrendWords(told)).toBeNull();
    expect(noTrendWords(trendOf([], null))).toBe("No day can be counted on yet.");
    expect(noTrendWords({ kind: "does not apply", because: "sessions" })).toContain("by session");
  });
});
