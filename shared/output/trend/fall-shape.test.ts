import { describe, expect, it } from "vitest";
import { netDaySeries } from "#tests/factories/net-day.ts";
import { countableDays } from "./countable-days.ts";
import { fallShape } from "./fall-shape.ts";

const shapeOf = (values: readonly (number | null)[]) => fallShape(countableDays(netDaySeries(values)).used);

describe("a fall", () => {
  it("is sudden where half of it or more comes from one day to the next", () => {
    expect(shapeOf([100, 98, 100, 30, 28, 26])).toEqual({
      kind: "sudden",
      firstMedian: 99,
      lastMedian: 27,
      fall: 72,
      third: 2,
      largest: { from: "2026-11-03", to: "2026-11-04", fall: 70 },
    });
  });

  it.each([
    ["exactly half", [100, 100, 90, 50, 20, 20], "sudden"],
    ["just under half", [100, 100, 89.99, 50, 20, 20], "gradual"],
    ["the same every day", [100, 88, 76, 64, 52, 40], "gradual"],
  ] as const)("of %s is %s", (_, values, kind) => {
    // Whole fall 80 (100 to 20), then 50 (94 to 46).
    expect(shapeOf(values).kind).toBe(kind);
  });

  it("that comes back over half way is none of the lasting ones", () => {
    // First third 100 90 30: median 90; last 50 45 40: 45; half way 67.5. Day 3 fell by 60, day 4 is back at 80.
    expect(shapeOf([100, 90, 30, 80, 70, 60, 50, 45, 29])).toMatchObject({ kind: "no fall" });
    expect(shapeOf([100, 90, 60, 80, 70, 60, 50, 45, 40])).toMatchObject({
      kind: "gradual",
      largest: { from: "2026-11-05", to: "2026-11-06", fall: 10 },
    });
    expect(shapeOf([100, 90, 60, 20, 95, 60, 50, 45, 40])).toMatchObject({
      kind: "sudden",
      largest: { from: "2026-11-05", to: "2026-11-06", fall: 35 },
    });
  });

  it("across days that nobody measured: cannot tell", () => {
    expect(shapeOf([100, 98, 100, null, 30, 28, 26])).toMatchObject({
      kind: "cannot tell",
      because: "days-missing-at-the-fall",
      largest: { from: "2026-11-03", to: "2026-11-05", fall: 70 },
    });
    expect(shapeOf([100, null, 88, 76, 64, 52, 40])).toMatchObject({ kind: "gradual" });
  });

  it.each([
    ["rising", [10, 20, 30, 40, 50]],
    ["level", [50, 50, 50, 50, 50]],
    ["a last third that touches the first", [50, 40, 30, 40, 20]],
  ] as const)("is none of days that are %s", (_, values) => {
    expect(shapeOf(values)).toEqual({ kind: "no fall" });
  });

  it("of under five days: cannot tell", () => {
    expect(shapeOf([100, 90, 10, 5])).toEqual({ kind: "cannot tell", because: "too-few-days" });
  });
});
