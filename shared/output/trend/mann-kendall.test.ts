import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bellTail } from "./bell-tail.ts";
import { exactTail } from "./exact-tail.ts";
import { kendall } from "./kendall.ts";
import { mannKendall } from "./mann-kendall.ts";

describe("the exact tail of S", () => {
  // Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring, table A18.
  it.each([
    [4, 6, 0.0417],
    [4, 4, 0.1667],
    [5, 10, 0.0083],
    [5, 8, 0.0417],
    [5, 6, 0.1167],
    [7, 15, 0.0151],
    [7, 13, 0.0345],
    [10, 23, 0.0233],
  ])("of n %d from %d on is %d", (n, s, p) => {
    expect(exactTail(n, s)).toBeCloseTo(p, 4);
  });

  const orders = (values: readonly number[]): number[][] =>
    values.length < 2
      ? [[...values]]
      : values.flatMap((first, index) => orders(values.toSpliced(index, 1)).map((rest) => [first, ...rest]));

  it.each([1, 2, 3, 4, 5, 6, 7])("agrees with writing out every order of %d values", (n) => {
    const all = orders(Array.from({ length: n }, (_, index) => index)).map((order) => kendall(order).s);
    const most = (n * (n - 1)) / 2;
    for (let s = -most - 1; s <= most + 1; s += 1)
      expect(exactTail(n, s)).toBeCloseTo(all.filter((one) => one >= s).length / all.length, 12);
  });
});

// Abramowitz and Stegun 1964, table 26.1: 1 - P(x). The polynomial is off by less than 7.5e-8.
it.each([
  [0, 0.5],
  [0.5, 0.3085375387],
  [1, 0.1586552539],
  [1.96, 0.0249978952],
  [2, 0.0227501319],
  [3, 0.001349898],
  [4, 0.0000316712],
])("beyond %d of a bell curve lies %d", (z, p) => {
  expect(Math.abs(bellTail(z) - p)).toBeLessThan(7.5e-8);
});

describe("Mann-Kendall", () => {
  it("with ties is that of US EPA QA/G-9S: S 22, variance 466/3, Z 1.685", () => {
    const told = mannKendall([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15]);
    expect(told).toMatchObject({ kind: "large sample", n: 11, pairs: 55, s: 22, ties: [4, 2] });
    if (told.kind !== "large sample") throw new Error(told.kind);
    expect(told.variance).toBeCloseTo(466 / 3, 10);
    expect(told.z).toBeCloseTo(1.685, 3);
    // Twice the upper tail of 1.6857, by table 26.1 of Abramowitz and Stegun.
    expect(told.p).toBeCloseTo(0.092, 4);
  });

  it("is exact and two-sided up to ten values without ties", () => {
    expect(mannKendall([5, 4, 3, 2])).toMatchObject({ kind: "exact", s: -6, variance: 26 / 3 });
    // Twice the one-sided values of Gilbert 1987, A18.
    expect(mannKendall([5, 4, 3, 2])).toHaveProperty("p", 2 / 24);
    expect(mannKendall([1, 2, 3, 4, 5])).toHaveProperty("p", 2 / 120);
    expect(mannKendall([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])).toMatchObject({ kind: "exact", s: 45 });
    expect(mannKendall([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])).toMatchObject({ kind: "large sample", s: 55 });
    expect(mannKendall([1, 2, 3, 4, 4])).toMatchObject({ kind: "large sample", s: 9, ties: [2] });
  });

  it("finds nothing in values that do not change, and p is never over 1", () => {
    expect(mannKendall([7, 7, 7, 7])).toMatchObject({ s: 0, variance: 0, z: 0, p: expect.closeTo(1, 7) });
    expect(mannKendall([1, 4, 2, 3, 0])).toMatchObject({ kind: "exact", s: -2 });
    expect(mannKendall([2, 4, 1, 3])).toMatchObject({ kind: "exact", s: 0, p: 1 });
    expect(mannKendall([2, 2, 1, 3, 2])).toMatchObject({ s: 1, z: 0, p: expect.closeTo(1, 7) });
  });

  it("of under four days tells nothing", () => {
    expect(mannKendall([1, 2, 3])).toEqual({ kind: "none", because: "too-few-days" });
  });

  const anyValues = fc.array(fc.integer({ min: -20, max: 60 }), { minLength: 4, maxLength: 24 });
  const tellingOf = (values: readonly number[]) => {
    const told = mannKendall(values);
    if (told.kind === "none") throw new Error(told.because);
    return told;
  };

  it("knows only which is more: a shift and a scale change nothing, p is a part of one", () => {
    fc.assert(
      fc.property(anyValues, fc.integer({ min: 1, max: 9 }), fc.integer(), (values, scale, shift) => {
        const told = tellingOf(values);
        expect(tellingOf(values.map((value) => value * scale + shift))).toEqual(told);
        expect(told.p).toBeGreaterThan(0);
        expect(told.p).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("read backwards has the opposite sign and the same p", () => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const forwards = tellingOf(values);
        const backwards = tellingOf(values.toReversed());
        expect(backwards.s + forwards.s).toBe(0);
        expect(backwards).toMatchObject({ p: forwards.p, variance: forwards.variance, kind: forwards.kind });
      }),
    );
  });
});
