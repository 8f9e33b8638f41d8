import fc from "fast-check";
import { expect, it } from "vitest";
import { nthSmallest } from "./nth-smallest.ts";

it("finds what sorting would find, at every place, however often it is asked", () => {
  const any = fc.array(
    fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.double({ noNaN: true }).map((value) => value + 0),
    ),
    {
      minLength: 1,
    },
  );
  fc.assert(
    fc.property(any, (values) => {
      const asked = Float64Array.from(values);
      const sorted = [...values].sort((a, b) => a - b);
      for (const [place, value] of sorted.entries()) expect(nthSmallest(asked, place)).toBe(value + 0);
      expect([...asked].sort((a, b) => a - b)).toEqual(sorted);
    }),
  );
});

it("finds nothing where no value would stand", () => {
  expect(nthSmallest(Float64Array.from([3, 1]), 2)).toBeUndefined();
  expect(nthSmallest(Float64Array.from([3, 1]), -1)).toBeUndefined();
  expect(nthSmallest(new Float64Array(0), 0)).toBeUndefined();
});
