import { describe, expect, it } from "vitest";
import type { TubeInside } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import { type PassageRows, wireOf } from "#shared/fit/passage.ts";
import type { Gauge } from "#shared/size/gauge.ts";
import { readNeedle } from "#shared/size/read-needle.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { exampleRows } from "#tests/factories/coaxial.ts";
import { blank, inch, takes } from "#tests/factories/tube-inside.ts";

/**
 * What the trade says of needles and wires (practice, no source), held against the insides of regular-wall needles (needle gauge
 * comparison chart). The insides stand here and nowhere in the program: walls differ, so what a needle takes is a recorded fact.
 */
const regularWall = { 18: 0.033, 19: 0.027, 20: 0.02375, 21: 0.02025, 22: 0.01625 } as const satisfies Record<
  Gauge,
  number
>;

/** A straight needle: as wide at its tip as in its shaft. */
const needle = (inches: number, tolerance: number | null = 0): TubeInside => ({
  ...blank,
  bores: [
    {
      place: "end hole",
      inside: confirmed(inch(inches)),
      tolerance: tolerance === null ? null : inch(tolerance),
    },
  ],
});
const verdict = (wire: number, inside: TubeInside, rows: PassageRows = exampleRows): string =>
  passageBySize({ goes: wireOf(confirmed(inch(wire))), inside, rows }).verdict;

describe("21 gauge takes an 0.018 wire (practice): holds for a regular wall", () => {
  it("0.018 + 0.001 clearance = 0.019 is under 0.02025 in", () => {
    expect(verdict(0.018, needle(regularWall[21]))).toBe("passes");
  });

  it("is doubt where the inside is no better known than by the row: 0.02025 - 0.00197 - 0.001 = 0.01728", () => {
    expect(verdict(0.018, needle(regularWall[21], null))).toBe("doubt");
  });

  it("22 gauge does not: 0.018 is over 0.01625", () => {
    expect(verdict(0.018, needle(regularWall[22]))).toBe("does not pass");
  });
});

describe("19 gauge takes an 0.035 wire (practice): does not hold for a regular wall", () => {
  it("its inside is 0.027 in, which is under 0.035 whatever the tolerance of the row", () => {
    expect(verdict(0.035, needle(regularWall[19]))).toBe("does not pass");
    expect(verdict(0.035, needle(regularWall[19], null))).toBe("does not pass");
  });

  it("nor does 18 gauge of a regular wall, 0.033 in: sources that say 18 or 19 mean thin walls", () => {
    expect(verdict(0.035, needle(regularWall[18]))).toBe("does not pass");
  });

  it("a thin wall of the same outside may: 0.042 outside, 0.038 measured within, 0.036 needed", () => {
    expect(verdict(0.035, needle(0.038))).toBe("passes");
    expect(verdict(0.035, takes(0.035))).toBe("passes");
  });
});

it.each([
  [18, 0.025],
  [19, 0.025],
  [20, 0.018],
] as const)("a regular %s gauge takes an %s wire", (gauge, wire) => {
  expect(verdict(wire, needle(regularWall[gauge]))).toBe("passes");
});

it("a gauge tells an outside and no inside: of a needle that is known by it alone nobody can tell", () => {
  const read = readNeedle("19 G");
  expect(read).toMatchObject({ ok: true, value: { outside: confirmed(inch(0.042)) } });
  expect(verdict(0.035, blank)).toBe("cannot tell");
});
