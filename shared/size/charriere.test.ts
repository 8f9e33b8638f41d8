import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { figureIn, lengthOf } from "#shared/size/exact-length.ts";
import { lengthUnits } from "#shared/size/length.ts";

/** What is used of the reference library of UCUM (Unified Code for Units of Measure), which brings no types. */
type Ucum = {
  readonly UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(from: string, value: number, to: string): { status: string; toVal: number | null };
    };
  };
};
const { UcumLhcUtils } = createRequire(import.meta.url)("@lhncbc/ucum-lhc") as Ucum;
const ucum = UcumLhcUtils.getInstance();

const inMm = (code: string, figure: number): number => {
  const { status, toVal } = ucum.convertUnitTo(code, figure, "mm");
  if (status !== "succeeded" || toVal === null) throw new Error(`UCUM does not know ${code}`);
  return toVal;
};

const codes = { F: "[Ch]", in: "[in_i]", mm: "mm", cm: "cm" } as const satisfies Record<
  (typeof lengthUnits)[number],
  string
>;

describe("French is UCUM's [Ch]", () => {
  it.each([
    [8, 2.6667],
    [8.5, 2.8333],
    [10.2, 3.4],
    [24, 8],
  ])("%s F is %s mm there and here", (figure, mm) => {
    expect(inMm("[Ch]", figure)).toBeCloseTo(mm, 4);
    expect(figureIn(lengthOf(figure, "F"), "mm")).toBeCloseTo(inMm("[Ch]", figure), 12);
  });
});

it.each(lengthUnits)("a length in %s is as many millimeters there as here", (unit) => {
  for (const figure of [0.014, 0.018, 0.035, 0.038, 1, 8, 25.5, 145])
    expect(figureIn(lengthOf(figure, unit), "mm")).toBeCloseTo(inMm(codes[unit], figure), 10);
});
