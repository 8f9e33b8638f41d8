import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mannKendall } from "./mann-kendall.ts";
import { type MedianLine, type Point, theilSen } from "./theil-sen.ts";

const points = (xs: readonly number[], ys: readonly number[]): Point[] =>
  xs.map((x, index) => ({ x, y: ys[index]! }));

function lineOf(of: readonly Point[], level?: Parameters<typeof theilSen>[1]): MedianLine {
  const line = theilSen(of, level);
  if (line.kind === "none") throw new Error(line.because);
  return line;
}

const sen = points([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]);

describe("the median line", () => {
  it("is that of Sen 1968 (JASA 63:1379): slope 4, 93 % interval 26/7 to 35/8, intercept 4 by the medians", () => {
    // 1.811911 leaves 3.5 % on each side of a bell curve.
    const line = lineOf(sen, { percent: 93, z: 1.811911 });
    expect(line.slope).toBe(4);
    expect(line.interval).toEqual({ kind: "told", low: 26 / 7, high: 35 / 8, rank: 4 });
    expect(line.anchor).toEqual({ x: 4, y: 20 });
    expect(line.anchor.y - line.slope * line.anchor.x).toBe(4);
    expect(line).toMatchObject({ slopes: 21, variance: 133 / 3 });
  });

  it("has no interval of four days: no two slopes leave so little outside", () => {
    const line = lineOf(points([0, 1, 2, 3], [40, 30, 20, 10]));
    expect(line).toMatchObject({ slope: -10, interval: { kind: "none", because: "too-few-days" } });
    expect(lineOf(points([0, 1, 2, 3, 4], [50, 40, 31, 20, 10])).interval).toEqual({
      kind: "told",
      low: -11,
      high: -9,
      rank: 1,
    });
  });

  it("of under four days is not told", () => {
    expect(theilSen(points([0, 1, 2], [3, 2, 1]))).toEqual({ kind: "none", because: "too-few-days" });
  });

  it("lets days that are alike narrow the variance", () => {
    // (5 * 4 * 15 - 3 * 2 * 11 - 2 * 1 * 9) / 18 = 12; rank (10 - 1.96 * 3.4641) / 2 = 1.605, rounded 2.
    const line = lineOf(points([0, 1, 2, 3, 4], [100, 100, 100, 20, 20]));
    expect(line.variance).toBe(12);
    expect(line.interval).toMatchObject({ rank: 2, low: -40, high: 0 });
  });
});

describe("its interval", () => {
  const anyOrder = fc.integer({ min: 5, max: 10 }).chain((n) =>
    fc.shuffledSubarray(
      Array.from({ length: n }, (_, index) => index),
      { minLength: n },
    ),
  );

  it("leaves out 0 exactly where the exact two-sided p is 5 % or less", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const { interval } = lineOf(order.map((y, x) => ({ x, y })));
        const told = mannKendall(order);
        if (interval.kind === "none" || told.kind !== "exact") throw new Error("no interval");
        expect(interval.low > 0 || interval.high < 0).toBe(told.p <= 0.05);
      }),
      { numRuns: 400 },
    );
  });
});

const anyPoints = fc.uniqueArray(
  fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: -50, max: 400 }) }),
  {
    minLength: 4,
    maxLength: 20,
    selector: ({ x }) => x,
  },
);

describe("laws of the median line", () => {
  /** Written another way: for each pair its slope, each slope's place found by counting. */
  function bySlowCount(of: readonly Point[]): number {
    const slopes = of.flatMap((a) => of.filter((b) => b.x > a.x).map((b) => (b.y - a.y) / (b.x - a.x)));
    const placed = (place: number): number =>
      slopes.find(
        (slope) =>
          slopes.filter((other) => other < slope).length <= place &&
          slopes.filter((other) => other <= slope).length > place,
      ) ?? Number.NaN;
    return (placed(Math.floor((slopes.length - 1) / 2)) + placed(Math.floor(slopes.length / 2))) / 2;
  }

  it("agrees with a slow count, and lies inside its interval", () => {
    fc.assert(
      fc.property(anyPoints, (of) => {
        const { slope, interval, slopes } = lineOf(of);
        expect(slope).toBeCloseTo(bySlowCount(of), 10);
        expect(slopes).toBe((of.length * (of.length - 1)) / 2);
        if (interval.kind === "told") {
          expect(interval.low).toBeLessThanOrEqual(slope);
          expect(interval.high).toBeGreaterThanOrEqual(slope);
        }
      }),
    );
  });

  it("does not change with the order of entry", () => {
    fc.assert(
      fc.property(anyPoints, fc.infiniteStream(fc.nat()), (of, keys) => {
        const shuffled = of.map((point) => ({ point, key: keys.next().value })).sort((a, b) => a.key - b.key);
        expect(theilSen(shuffled.map(({ point }) => point))).toEqual(theilSen(of));
      }),
    );
  });

  it("a shift moves the anchor alone, a scale scales, time read backwards flips the sign", () => {
    fc.assert(
      fc.property(anyPoints, fc.integer({ min: -99, max: 99 }), fc.constantFrom(2, 4, 8), (of, by, scale) => {
        const line = lineOf(of);
        const shifted = lineOf(of.map(({ x, y }) => ({ x, y: y + by })));
        expect(shifted).toEqual({ ...line, anchor: { x: line.anchor.x, y: line.anchor.y + by } });
        const scaled = lineOf(of.map(({ x, y }) => ({ x, y: y * scale })));
        expect(scaled.slope).toBe(line.slope * scale);
        const backwards = lineOf(of.map(({ x, y }) => ({ x: 60 - x, y })));
        expect(backwards.slope + line.slope).toBe(0);
        if (line.interval.kind === "told" && backwards.interval.kind === "told")
          expect(backwards.interval.low + line.interval.high).toBe(0);
      }),
    );
  });
});
