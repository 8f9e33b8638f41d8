import fc from "fast-check";
import { TheilSenRegression } from "ml-regression-theil-sen";
import { errorFunction, median as medianThere } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { median } from "#shared/output/median.ts";
import { netDaySeries } from "#tests/factories/net-day.ts";
import { bellTail } from "./bell-tail.ts";
import { countableDays } from "./countable-days.ts";
import { halfLife } from "./half-life.ts";
import { theilSen } from "./theil-sen.ts";

/** Days of a tube, some of them missing, with their net in mL/24 h. */
const anySeries = fc.uniqueArray(
  fc.record({ x: fc.integer({ min: 0, max: 120 }), y: fc.integer({ min: 1, max: 3500 }) }),
  { minLength: 4, maxLength: 40, selector: ({ x }) => x },
);

const anyValues = fc.array(fc.integer({ min: 1, max: 3500 }), { minLength: 5, maxLength: 20 });

/** Of an even count that library takes the lower of the two middle slopes and not their mean (Sen 1968): it is asked where there is one middle. */
const hasOneMiddle = ({ length: n }: readonly unknown[]): boolean => ((n * (n - 1)) / 2) % 2 === 1;

describe("against other people's libraries", () => {
  it("the slope is that of ml-regression-theil-sen", () => {
    fc.assert(
      fc.property(anySeries.filter(hasOneMiddle), (points) => {
        const line = theilSen(points);
        const other = new TheilSenRegression(
          points.map(({ x }) => x),
          points.map(({ y }) => y),
        );
        expect(line.kind === "none" ? null : line.slope).toBeCloseTo(other.slope, 9);
      }),
    );
  });

  it("the half-life is ln 2 over its slope of the logarithms", () => {
    fc.assert(
      fc.property(anyValues.filter(hasOneMiddle), (values) => {
        const told = halfLife(countableDays(netDaySeries(values)).used);
        if (told.kind !== "told") return;
        const other = new TheilSenRegression([...values.keys()], values.map(Math.log));
        expect(told.days).toBeCloseTo(Math.LN2 / -other.slope, 9);
      }),
    );
  });

  it("the median is that of simple-statistics", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -99, max: 5000 }), { minLength: 1 }), (values) => {
        expect(median(values)).toBe(medianThere(values));
      }),
    );
  });

  it("the tail of a bell curve is that of its error function, both within the error of their polynomials", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6, noNaN: true }), (z) => {
        expect(Math.abs(bellTail(z) - (1 - errorFunction(z / Math.SQRT2)) / 2)).toBeLessThan(2e-7);
      }),
    );
  });
});
