import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CoaxialSort, coaxialSorts } from "#shared/fit/coaxial.ts";
import { printOutside, readOutside } from "#shared/shelf/outside.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { gaugeOutside } from "#shared/size/gauge.ts";
import { confirmed } from "#shared/tube/certainty.ts";

describe("an outside in the trade's unit for its sort", () => {
  it.each<[CoaxialSort, number, "F" | "in" | "mm", string]>([
    ["wire", 0.035, "in", "0.035 in"],
    ["wire", 0.9, "mm", "0.9 mm"],
    ["tube", 10.2, "F", "10.2 F"],
    ["tube", 2.675, "mm", "2.675 mm"],
    ["sheath", 3, "mm", "9 F"],
    ["stiffener", 3, "mm", "3 mm"],
    ["stiffener", 4, "F", "4 F"],
    ["needle", 0.82, "mm", "0.82 mm"],
    ["needle", 0.03225, "in", "21 G"],
    ["dilator", 0.03225, "in", "0.03225 in"],
  ])("of a %s %d %s is %s", (sort, figure, unit, printed) => {
    expect(printOutside(lengthOf(figure, unit), sort)).toBe(printed);
  });

  /** Sizes that can be typed: two decimals of French, of a millimetre, of a thousandth of an inch. */
  const typed = fc.oneof(
    fc.record({ unit: fc.constant("F"), n: fc.integer({ min: 300, max: 4000 }), per: fc.constant(100) }),
    fc.record({ unit: fc.constant("mm"), n: fc.integer({ min: 30, max: 1300 }), per: fc.constant(100) }),
    fc.record({
      unit: fc.constant("in"),
      n: fc.integer({ min: 1000, max: 5200 }),
      per: fc.constant(100_000),
    }),
    fc.record({ unit: fc.constant("G"), n: fc.constantFrom(18, 19, 20, 21, 22), per: fc.constant(1) }),
  );

  it("reads again as it was, whatever the sort, where the sort takes it at all", () => {
    fc.assert(
      fc.property(fc.constantFrom(...coaxialSorts), typed, (sort, { unit, n, per }) => {
        const read = readOutside(`${n / per} ${unit}`, sort);
        if (!read.ok || read.value.certainty === "unknown") return;
        expect(readOutside(printOutside(read.value.value, sort), sort)).toEqual(read);
      }),
    );
  });

  it("of a needle is its gauge or its measure", () => {
    expect(readOutside("21 g", "needle")).toEqual({ ok: true, value: confirmed(gaugeOutside[21]) });
    expect(readOutside("21 g", "tube").ok).toBe(false);
  });
});
