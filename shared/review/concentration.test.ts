import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analytes, unitsOf } from "./analyte.ts";
import { concentration, exactConcentration, inOwnUnit } from "./concentration.ts";

describe("1 mg/dL in the own unit", () => {
  it.each([
    // 10 mg/L over the molar mass: 584.66 g/mol.
    ["bilirubin", 17.104, 584.66],
    ["creatinine", 88.402, 113.12],
    // The factor is from memory; triolein, 885.4 g/mol, gives 0.011294, 0.08 % more. In mmol/L, hence the thousand.
    ["triglyceride", 0.011286, 885.4 * 1000],
  ] as const)("%s is %d, within a thousandth of what the molar mass gives", (analyte, literal, molarMass) => {
    const perDecilitre = unitsOf(analyte).typed.find(({ words }) => words.includes("mg/dl"));
    expect(Number(perDecilitre?.inOwn)).toBe(literal);
    expect(Math.abs(literal / (10_000 / molarMass) - 1)).toBeLessThan(0.001);
  });
});

describe("a typed value is exact", () => {
  it.each([
    ["5", "17.104", 85_520_000_000],
    ["1.25", "17.104", 21_380_000_000],
    ["10", "88.42", 884_200_000_000],
    ["0.9", "88.42", 79_578_000_000],
    ["110", "0.011286", 1_241_460_000],
    ["111", "0.011286", 1_252_746_000],
    ["4200", "1", 4_200_000_000_000],
    // In floats 0.1 + 0.2 is not 0.3; here a tenth is a tenth.
    ["0.1", "1", 100_000_000],
  ])("%s of a unit of %s is %d billionths", (figure, inOwn, billionths) => {
    expect(exactConcentration(figure, inOwn)).toBe(billionths);
  });

  it.each([["0.0000000001"], ["."], [""], ["-1"], ["1e3"], ["99999999999"]])("%j is none", (figure) => {
    expect(exactConcentration(figure)).toBeUndefined();
    expect(() => concentration(Number.NaN)).toThrow(RangeError);
  });

  it("with three decimals, in any unit of any analyte", () => {
    const units = analytes.flatMap((analyte) => unitsOf(analyte).typed);
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer({ min: 0, max: 999_999 }),
        ({ inOwn }, thousandths) => {
          const level = exactConcentration((thousandths / 1000).toFixed(3), inOwn);
          expect(level).toBeDefined();
          expect(inOwnUnit(level ?? concentration(0))).toBeCloseTo((thousandths / 1000) * Number(inOwn), 9);
        },
      ),
    );
  });
});
