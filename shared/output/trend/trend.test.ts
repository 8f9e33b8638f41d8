import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netDayOf, netDaySeries } from "#tests/factories/net-day.ts";
import { trendOf } from "./trend.ts";
import { trendOfTube } from "./trend-of-tube.ts";

const row = { lowNetMl: 10 };

describe("a trend", () => {
  it("of no countable day says which were left out", () => {
    expect(trendOf(netDaySeries([null]), row)).toEqual({
      kind: "no days",
      days: {
        used: [],
        leftOut: [{ day: "2026-11-01", because: ["no-reading"] }],
        until: "2026-11-01",
      },
    });
  });

  it("of few days has a median, and says of the rest that they are too few", () => {
    expect(trendOf(netDaySeries([30, 10, 11]), row)).toMatchObject({
      kind: "told",
      median: 11,
      line: { kind: "none", because: "too-few-days" },
      kendall: { kind: "none", because: "too-few-days" },
      halfLife: { kind: "none", because: "too-few-days" },
      fall: { kind: "cannot tell", because: "too-few-days" },
      ifUnchanged: { kind: "none", because: "too-few-days" },
    });
  });

  it("rests on the last segment alone", () => {
    const before = netDaySeries([900, 800, 700]);
    const since = ["04", "05", "06", "07", "08"].map((on, index) =>
      netDayOf(`2026-11-${on}`, 50 - 10 * index, { segment: 1 }),
    );
    const { days: _, ...told } = trendOf([...before, ...since], row);
    const { days: __, ...alone } = trendOf(since, row);
    expect(told).toEqual(alone);
    expect(told).toMatchObject({ median: 30, line: { slope: -10 }, kendall: { s: -10 } });
  });

  it("does not change with the order of its days", () => {
    const any = fc.array(fc.option(fc.integer({ min: -9, max: 300 })), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(any, (values) => {
        const days = netDaySeries(values);
        expect(trendOf(days.toReversed(), row)).toEqual(trendOf(days, row));
      }),
    );
  });
});

describe("the trend of a tube", () => {
  const days = netDaySeries([120, 112, 101, 96, 84, 80, 69]);

  it("has a span for a collection alone: no other is asked for low output", () => {
    const of = (role: "collection" | "drains an organ" | "air and fluid" | "venting") =>
      trendOfTube(days, { role, mode: "to bag", row });
    expect(of("collection")).toMatchObject({ kind: "told", ifUnchanged: { kind: "span" } });
    for (const role of ["drains an organ", "air and fluid", "venting"] as const)
      expect(of(role)).toMatchObject({ kind: "told", ifUnchanged: { kind: "none", because: "no-row" } });
  });

  it.each([
    ["intermittent", "to bag", "sessions"],
    ["internal", "to bag", "role"],
    ["feeding", "to bag", "role"],
    ["irrigation access", "to bag", "role"],
    ["collection", "capped", "mode"],
    ["collection", "clamped", "mode"],
    ["drains an organ", "on a clamp trial", "mode"],
  ] as const)("does not apply to %s, %s, because of the %s", (role, mode, because) => {
    expect(trendOfTube(days, { role, mode, row })).toEqual({ kind: "does not apply", because });
  });
});
