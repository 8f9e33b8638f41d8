import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { lengthOf } from "#shared/size/exact-length.ts";
import { type Length, lengthUnits, unitsPer } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";

describe("as the trade writes it", () => {
  it.each([
    [lengthOf(8, "F"), "F", "8 F"],
    [lengthOf(8.5, "F"), "F", "8.5 F"],
    [lengthOf(10.2, "F"), "F", "10.2 F"],
    [lengthOf(0.035, "in"), "F", "2.67 F"],
    [lengthOf(0.035, "in"), "in", "0.035 in"],
    [lengthOf(0.05, "in"), "in", "0.050 in"],
    [lengthOf(0.03225, "in"), "in", "0.03225 in"],
    [lengthOf(1, "in"), "in", "1.000 in"],
    [lengthOf(2.7, "mm"), "in", "0.106 in"],
    [lengthOf(2.7, "mm"), "mm", "2.7 mm"],
    [lengthOf(3, "mm"), "mm", "3 mm"],
    [lengthOf(2.375, "mm"), "mm", "2.375 mm"],
    [lengthOf(8, "F"), "mm", "2.67 mm"],
    [lengthOf(0.003, "in"), "mm", "0.076 mm"],
    [lengthOf(0.038, "in"), "mm", "0.965 mm"],
    [lengthOf(25, "cm"), "cm", "25 cm"],
    [lengthOf(25.5, "cm"), "cm", "25.5 cm"],
    [lengthOf(0, "cm"), "cm", "0 cm"],
    [lengthOf(100, "mm"), "mm", "100 mm"],
  ] as const)("%i units in %s are %j", (length, unit, text) => {
    expect(printLength(length, unit)).toBe(text);
  });

  it("prints both units", () => {
    expect(printBoth(lengthOf(8, "F"), "F", "mm")).toBe("8 F (2.67 mm)");
    expect(printBoth(lengthOf(0.003, "in"), "in", "mm")).toBe("0.003 in (0.076 mm)");
  });
});

it.each([
  [1, "in", "under 0.001 in"],
  [19_049, "in", "under 0.001 in"],
  [19_050, "in", "0.0005 in"],
  [19_051, "in", "0.001 in"],
  [1, "mm", "under 0.001 mm"],
  [1, "F", "under 0.01 F"],
  [1, "cm", "under 0.01 cm"],
] as const)("%i units never read as none: %s %s", (units, unit, text) => {
  expect(printLength(units as Length, unit)).toBe(text);
});

it("is within half of the last rounded decimal of the exact fraction", () => {
  const half = { F: "0.005", in: "0.0005", mm: "0.005", cm: "0.005" };
  fc.assert(
    fc.property(
      fc.integer({ min: 200_000, max: 2_000_000_000 }),
      fc.constantFrom(...lengthUnits),
      (units, unit) => {
        const [figure = "", printed] = printLength(units as Length, unit).split(" ");
        expect(printed).toBe(unit);
        const off = new Fraction(units, unitsPer[unit]).sub(figure).abs();
        expect(off.lte(half[unit])).toBe(true);
      },
    ),
  );
});
