import { describe, expect, it } from "vitest";
import { MEASURED_DRAINS_SOURCE, measuredDrains } from "#shared/fit/measured-drains.ts";
import { figureIn } from "#shared/size/exact-length.ts";

// Scientific Reports 2025, s41598-024-71935-w: mean bores and flows of drains of eight makers.
describe("drains as they were measured", () => {
  it.each([
    [6, 1.49, 128],
    [8, 1.9, 207],
    [10, 2.43, 291],
    [12, 2.64, 303],
  ])("%d F: %s mm, %d mL/min", (french, mm, flow) => {
    const drain = measuredDrains.find(({ outside }) => figureIn(outside, "F") === french);
    expect(drain && [figureIn(drain.meanBore, "mm"), drain.flowMlPerMin]).toEqual([mm, flow]);
  });

  it("name their source", () => {
    expect(MEASURED_DRAINS_SOURCE).toContain("s41598-024-71935-w");
  });

  it("from 10 F to 12 F the fourth power says x1.39 and the bench x1.04: no flow comes from a bore", () => {
    const [, , ten, twelve] = measuredDrains;
    expect((twelve.meanBore / ten.meanBore) ** 4).toBeCloseTo(1.39, 2);
    expect(twelve.flowMlPerMin / ten.flowMlPerMin).toBeCloseTo(1.04, 2);
  });
});
