import { describe, expect, it } from "vitest";
import type { Place, TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { Goes } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { exampleRows, F, mm } from "#tests/factories/coaxial.ts";
import { blank, inch } from "#tests/factories/tube-inside.ts";

/**
 * Limits worked by hand under the example's rows: clearance 0.001 in = 0.0254 mm, a bore +-0.05 mm, a wire as it is, a device +-0.33 mm about
 * its size as stated (ISO 20696:2018, 5.5.2: outer diameter in mm rounded up to 0.1). Each is tried in an end hole one unit below, at and above: one
 * unit is 1/1500 of a micrometer.
 */
const measured = (
  inside: Length,
  tolerance: Length | null = null,
  place: Place = "end hole",
): TubeInside => ({
  ...blank,
  bores: [{ place, inside: confirmed(inside), tolerance }],
});
const verdict = (goes: Goes, inside: TubeInside): string =>
  passageBySize({ goes, inside, rows: exampleRows }).verdict;

const around = (limit: number, goes: Goes, tolerance: Length | null = null): string[] =>
  [-1, 0, 1].map((units) => verdict(goes, measured((mm(limit) + units) as Length, tolerance)));

const wire = (outside: Length, tolerance: Length | null = null): Goes => ({
  as: "wire",
  outside: confirmed(outside),
  tolerance,
});
const device = (outside: Length, tolerance: Length | null = null): Goes => ({
  ...wire(outside, tolerance),
  as: "device",
});

const passesFrom = ["doubt", "passes", "passes"];
const stopsUnder = ["does not pass", "doubt", "doubt"];

// From: the wire + 0.0254 + 0.05. Under: the wire + 0.0254 - 0.05.
describe.each([
  [0.014, 0.431, 0.331], // 0.3556 mm
  [0.018, 0.5326, 0.4326], // 0.4572 mm
  [0.025, 0.7104, 0.6104], // 0.6350 mm
  [0.035, 0.9644, 0.8644], // 0.8890 mm
  [0.038, 1.0406, 0.9406], // 0.9652 mm
])("a wire of %s in", (inches, from, under) => {
  it(`passes from ${from} mm`, () => {
    expect(around(from, wire(inch(inches)))).toEqual(passesFrom);
  });

  it(`does not pass under ${under} mm`, () => {
    expect(around(under, wire(inch(inches)))).toEqual(stopsUnder);
  });
});

// Stated, + 0.33 + 0.0254 + 0.05; stated, - 0.33 + 0.0254 - 0.05.
describe.each([
  [5, 2.1054, 1.3454], // 1.6667, stated 1.7: 1.37 to 2.03
  [6, 2.4054, 1.6454], // 2 exactly: 1.67 to 2.33
  [7, 2.8054, 2.0454], // 2.3333, stated 2.4: 2.07 to 2.73
  [8, 3.1054, 2.3454], // 2.6667, stated 2.7: 2.37 to 3.03
  [8.5, 3.3054, 2.5454], // 2.8333, stated 2.9: 2.57 to 3.23
  [9, 3.4054, 2.6454], // 3 exactly, not 3.1: 2.67 to 3.33
  [10, 3.8054, 3.0454], // 3.3333, stated 3.4: 3.07 to 3.73
  [10.2, 3.8054, 3.0454], // 3.4 exactly
  [12, 4.4054, 3.6454], // 4 exactly: 3.67 to 4.33
  [14, 5.1054, 4.3454], // 4.6667, stated 4.7: 4.37 to 5.03
  [16, 5.8054, 5.0454], // 5.3333, stated 5.4: 5.07 to 5.73
  [20, 7.1054, 6.3454], // 6.6667, stated 6.7: 6.37 to 7.03
  [24, 8.4054, 7.6454], // 8 exactly: 7.67 to 8.33
])("a device of %s F", (french, from, under) => {
  it(`passes from ${from} mm`, () => {
    expect(around(from, device(F(french)))).toEqual(passesFrom);
  });

  it(`does not pass under ${under} mm`, () => {
    expect(around(under, device(F(french)))).toEqual(stopsUnder);
  });
});

describe("recorded tolerances go before the rows", () => {
  it("a bore +-0.01 mm, a wire of 0.035 in", () => {
    // 0.889 + 0.0254 + 0.01 = 0.9244; 0.889 + 0.0254 - 0.01 = 0.9044.
    expect(around(0.9244, wire(inch(0.035)), mm(0.01))).toEqual(passesFrom);
    expect(around(0.9044, wire(inch(0.035)), mm(0.01))).toEqual(stopsUnder);
  });

  it("a bore that is exact leaves no doubt: 0.889 + 0.0254 = 0.9144", () => {
    expect(around(0.9144, wire(inch(0.035)), mm(0))).toEqual(["does not pass", "passes", "passes"]);
  });

  it("a wire +-0.02 mm in a bore of the row", () => {
    // 0.889 + 0.02 + 0.0254 + 0.05 = 0.9844; 0.889 - 0.02 + 0.0254 - 0.05 = 0.8444.
    expect(around(0.9844, wire(inch(0.035), mm(0.02)))).toEqual(passesFrom);
    expect(around(0.8444, wire(inch(0.035), mm(0.02)))).toEqual(stopsUnder);
  });

  it("a device +-0.1 mm about the size itself: 10.2 F = 3.4 mm", () => {
    // 3.4 + 0.1 + 0.0254 + 0.05 = 3.5754; 3.4 - 0.1 + 0.0254 - 0.05 = 3.2754.
    expect(around(3.5754, device(F(10.2), mm(0.1)))).toEqual(passesFrom);
    expect(around(3.2754, device(F(10.2), mm(0.1)))).toEqual(stopsUnder);
  });
});

// Up to and including what the package says.
it.each([0.014, 0.018, 0.025, 0.035, 0.038])(
  "a label of %s in lets through that much and no unit more",
  (inches) => {
    const inside: TubeInside = { ...blank, takes: confirmed(inch(inches)) };
    const at = [-1, 0, 1].map((units) => verdict(wire((inch(inches) + units) as Length), inside));
    expect(at).toEqual(["passes", "passes", "does not pass"]);
  },
);

it.each([5, 7, 10.2, 14])(
  "a label for a device of %s F lets through that much and no unit more",
  (french) => {
    const inside: TubeInside = { ...blank, takesDevice: confirmed(F(french)) };
    const at = [-1, 0, 1].map((units) => verdict(device((F(french) + units) as Length), inside));
    expect(at).toEqual(["passes", "passes", "does not pass"]);
  },
);
