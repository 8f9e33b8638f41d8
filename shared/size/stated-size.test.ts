import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { statedOuter, statedSheathInside } from "#shared/size/stated-size.ts";

// ISO 20696:2018, 5.5.2: outer diameter in mm rounded up to 0.1, tolerance +-0.33 mm.
it.each([
  [8, "2.7 mm", "2.37 mm", "3.03 mm"],
  [8.5, "2.9 mm", "2.57 mm", "3.23 mm"],
  [9, "3 mm", "2.67 mm", "3.33 mm"],
  [10, "3.4 mm", "3.07 mm", "3.73 mm"],
  [10.2, "3.4 mm", "3.07 mm", "3.73 mm"],
  [12, "4 mm", "3.67 mm", "4.33 mm"],
  [14, "4.7 mm", "4.37 mm", "5.03 mm"],
  [16, "5.4 mm", "5.07 mm", "5.73 mm"],
  [20, "6.7 mm", "6.37 mm", "7.03 mm"],
  [24, "8 mm", "7.67 mm", "8.33 mm"],
])("%s F is stated %s, %s to %s", (french, stated, least, most) => {
  const outer = statedOuter(lengthOf(french, "F"));
  expect(printLength(outer.stated, "mm")).toBe(stated);
  expect(printLength(outer.least, "mm")).toBe(least);
  expect(printLength(outer.most, "mm")).toBe(most);
});

it.each([
  [2.69999, 2.7],
  [2.7, 2.7],
  [2.70001, 2.8],
])("an outside of %s mm is stated %s mm", (mm, stated) => {
  expect(statedOuter(lengthOf(mm, "mm")).stated).toBe(lengthOf(stated, "mm"));
});

it("never states less than nothing", () => {
  expect(statedOuter(lengthOf(0.1, "mm")).least).toBe(0);
});

// ISO 11070:2014, 7.2: minimum inside diameter rounded down to 0.1 mm.
it.each([
  [3.39999, 3.3],
  [3.4, 3.4],
  [3.40001, 3.4],
])("a sheath of %s mm inside is stated %s mm", (mm, stated) => {
  expect(statedSheathInside(lengthOf(mm, "mm"))).toBe(lengthOf(stated, "mm"));
});

it("a 10 F drain may be thinner or thicker than the inside of a sheath stated 3.3 mm", () => {
  const drain = statedOuter(lengthOf(10, "F"));
  const sheath = statedSheathInside(lengthOf(3.3, "mm"));
  expect(drain.least).toBeLessThan(sheath);
  expect(drain.most).toBeGreaterThan(sheath);
});

it("rounds up as exact fractions do", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999 }), (tenths) => {
      const exact = new Fraction(tenths, 30).mul(10).ceil().div(10);
      expect(statedOuter(lengthOf(tenths / 10, "F")).stated).toBe(Number(exact.mul(1_500_000).n));
    }),
  );
});
