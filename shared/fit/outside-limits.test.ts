import { describe, expect, it } from "vitest";
import { outsideLimits, outsideTolerance } from "#shared/fit/outside-limits.ts";
import type { Goes, PassageRows } from "#shared/fit/passage.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { exampleRows, F, mm } from "#tests/factories/coaxial.ts";
import { inch, noRows } from "#tests/factories/tube-inside.ts";

const goes = (as: Goes["as"], tolerance: Goes["tolerance"] = null): Goes => ({
  as,
  outside: confirmed(F(8)),
  tolerance,
});

describe("what an outside may measure", () => {
  it("a device under the row: about its size as stated, 8 F = 2.67, stated 2.7, 2.37 to 3.03 (ISO 20696:2018, 5.5.2)", () => {
    expect(outsideLimits(F(8), goes("device"), exampleRows)).toEqual({
      least: mm(2.37),
      most: mm(3.03),
      tolerance: mm(0.33),
      from: "row",
    });
  });

  it("a device with a tolerance of its own: about the size itself, 10.2 F = 3.4 +-0.1", () => {
    expect(outsideLimits(F(10.2), goes("device", mm(0.1)), exampleRows)).toEqual({
      least: mm(3.3),
      most: mm(3.5),
      tolerance: mm(0.1),
      from: "recorded",
    });
    // 8 F is not rounded up to 2.7 before it: 2.66667 - 0.1 and + 0.1.
    expect(outsideLimits(F(8), goes("device", mm(0.1)), exampleRows)).toMatchObject({
      least: F(8) - mm(0.1),
      most: F(8) + mm(0.1),
    });
  });

  it("a wire under the row is as it is: 0.889 mm is not stated 0.9", () => {
    const rows: PassageRows = { ...exampleRows, outsideTolerance: { wire: mm(0.01), device: undefined } };
    expect(outsideLimits(inch(0.035), goes("wire"), rows)).toEqual({
      least: mm(0.879),
      most: mm(0.899),
      tolerance: mm(0.01),
      from: "row",
    });
  });

  it("never measures less than nothing: 0.2 +-0.33", () => {
    expect(outsideLimits(mm(0.2), goes("device"), exampleRows)).toMatchObject({ least: 0, most: mm(0.53) });
  });

  it("nought is a tolerance; without its own and without a row there is none", () => {
    expect(outsideTolerance(goes("wire", mm(0)), noRows)).toBe(0);
    expect(outsideTolerance(goes("device"), noRows)).toBeUndefined();
    expect(outsideLimits(F(8), goes("device"), noRows)).toBeUndefined();
    expect(outsideTolerance(goes("wire"), exampleRows)).toBe(0);
    expect(outsideTolerance(goes("device"), exampleRows)).toBe(mm(0.33));
  });
});
