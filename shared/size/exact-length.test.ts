import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { exactLength, figureIn, lengthOf } from "#shared/size/exact-length.ts";
import { type LengthUnit, lengthUnits } from "#shared/size/length.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";

/** 1 F = 1/3 mm of outer diameter (ISO 20696:2018, 5.5.2 note); 1 in = 25.4 mm by definition. */
const mmPer: Record<LengthUnit, Fraction> = {
  F: new Fraction(1, 3),
  in: new Fraction(254, 10),
  mm: new Fraction(1),
  cm: new Fraction(10),
};

describe("sizes of the trade in millimetres", () => {
  it.each([
    // 1 F = 1/3 mm (ISO 20696:2018, 5.5.2 note)
    [8, "F", "2.6667"],
    [8.5, "F", "2.8333"],
    [10, "F", "3.3333"],
    [10.2, "F", "3.4000"],
    [12, "F", "4.0000"],
    [14, "F", "4.6667"],
    [16, "F", "5.3333"],
    [20, "F", "6.6667"],
    [24, "F", "8.0000"],
    // Wires: arithmetic from 1 in = 25.4 mm
    [0.014, "in", "0.3556"],
    [0.018, "in", "0.4572"],
    [0.025, "in", "0.6350"],
    [0.035, "in", "0.8890"],
    [0.038, "in", "0.9652"],
  ] as const)("%s %s is %s mm", (figure, unit, mm) => {
    expect(figureIn(lengthOf(figure, unit), "mm").toFixed(4)).toBe(mm);
  });

  it.each([
    // Wires in French: arithmetic, 3 F a millimetre
    [0.018, "1.3716"],
    [0.035, "2.6670"],
    [0.038, "2.8956"],
  ])("a wire of %s in is %s F", (inches, french) => {
    expect(figureIn(lengthOf(inches, "in"), "F").toFixed(4)).toBe(french);
  });

  it("holds 3 F, 0.038 in, 1 mm and the outside of 19 gauge to be about the same, within 10 % (practice)", () => {
    const sizes = [lengthOf(3, "F"), lengthOf(0.038, "in"), lengthOf(1, "mm"), lengthOf(0.042, "in")];
    expect(Math.max(...sizes) / Math.min(...sizes)).toBeLessThan(1.11);
    for (const size of sizes) expect(Math.abs(figureIn(size, "mm") - 1)).toBeLessThan(0.1);
  });

  it("makes an 0.038 wire 1.39 times as stiff as an 0.035 by the fourth power (practice)", () => {
    expect((lengthOf(0.038, "in") / lengthOf(0.035, "in")) ** 4).toBeCloseTo(1.39, 2);
  });
});

describe("exactness", () => {
  it.each([
    ["0.00001", "in", 381],
    ["0.1", "F", 50_000],
    ["0.001", "mm", 1_500],
  ] as const)("%s %s is a whole number of units", (text, unit, units) => {
    expect(exactLength(text, unit)).toBe(units);
  });

  it.each(["", ".", "8,5", "1e3", "-1", " 8", "8F", "0x10", "١"])("%j is no plain decimal", (text) => {
    expect(exactLength(text, "mm")).toBeUndefined();
  });

  it.each([
    ["0.000001", "in"],
    ["0.000001", "mm"],
    ["6004799504", "mm"],
  ] as const)("%s %s has no exact length", (text, unit) => {
    expect(exactLength(text, unit)).toBeUndefined();
    expect(() => lengthOf(Number(text), unit)).toThrow(RangeError);
  });

  it("agrees with exact fractions on every decimal of up to 5 places", () => {
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(99_999), fc.constantFrom(...lengthUnits), (whole, fraction, unit) => {
        const text = `${whole}.${String(fraction).padStart(5, "0")}`;
        const units = new Fraction(text).mul(mmPer[unit]).mul(1_500_000);
        expect(units.d).toBe(1n);
        expect(exactLength(text, unit)).toBe(Number(units.n));
      }),
    );
  });
});

describe("a stored length", () => {
  it.each([0, 1, 4_000_000, Number.MAX_SAFE_INTEGER])("%s is one", (units) => {
    expect(lengthSchema.parse(units)).toBe(units);
  });

  it.each([
    -1,
    0.5,
    Number.NaN,
    Number.MAX_SAFE_INTEGER + 1,
    Number.POSITIVE_INFINITY,
    "8",
    null,
    undefined,
    8n,
  ])("%s is none", (value) => {
    expect(lengthSchema.safeParse(value).success).toBe(false);
  });
});
