import { describe, expect, it } from "vitest";
import { netDaySeries } from "#tests/factories/net-day.ts";
import { countableDays } from "./countable-days.ts";
import { halfLife } from "./half-life.ts";

const halfLifeOf = (values: readonly (number | null)[]) => halfLife(countableDays(netDaySeries(values)).used);

describe("half-life", () => {
  it("of 100 exp(-0.35 t) is ln 2 / 0.35 = 1.98042 days", () => {
    const told = halfLifeOf([0, 1, 2, 3, 4, 5].map((t) => 100 * Math.exp(-0.35 * t)));
    if (told.kind === "none") throw new Error(told.because);
    // Days are held to the microlitre, which moves the sixth digit.
    expect(told.days).toBeCloseTo(1.98042, 4);
    expect(told.line.slope).toBeCloseTo(-0.35, 4);
  });

  it("has the ends that the slope's interval gives", () => {
    // Ratios of neighbours: 1/2, 1/2, 1/4, 1/2: the steepest of ten slopes is -ln 4, the flattest -ln 2 (rank 1 of five days).
    const told = halfLifeOf([320, 160, 80, 20, 10]);
    if (told.kind === "none") throw new Error(told.because);
    expect(told.least).toBeCloseTo(0.5, 10);
    expect(told.most).toBeCloseTo(1, 10);
    expect(told.kind).toBe("told");
    // Ten slopes in halvings a day: 1, 1, 2, 1, 1, 3/2, 3/2, 4/3, 4/3, 5/4: the middle ones are 5/4 and 4/3.
    expect(told.days).toBeCloseTo(2 / (5 / 4 + 4 / 3), 10);
  });

  it.each([
    ["too-few-days", [80, 40, 20, 10]],
    ["too-few-days", [80, null, 40, 20, null, 10]],
    ["too-few-days", [80, 40, 0, 20]],
    ["not-every-day-over-zero", [80, 40, 20, 10, 0]],
    ["not-every-day-over-zero", [80, 40, 20, 10, -1]],
    ["interval-holds-zero", [50, 50, 50, 50, 50]],
    ["interval-holds-zero", [50, 48, 53, 49, 51, 50]],
    ["interval-holds-zero", [100, 100, 100, 20, 20]],
    ["rising", [10, 20, 40, 80, 160]],
  ] as const)("is none, because %s, of %j", (because, values) => {
    expect(halfLifeOf(values)).toEqual({ kind: "none", because });
  });
});
