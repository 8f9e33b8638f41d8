import { describe, expect, it } from "vitest";
import { criterionWhen, daily, drain, well, whole } from "#tests/factories/criterion.ts";
import * as make from "#tests/support/factories.ts";

type Asked = Parameters<typeof criterionWhen>[0];

const plateauWhen = (asked: Asked) =>
  criterionWhen({ entries: [drain(), well], ...asked }).beside.find(({ code }) => code === "plateau");

/** Whole days up to Sun 15 Nov 2026, in mL. */
const days = (...volumes: readonly number[]) => ({ readings: daily("2026-11-15", volumes) });

describe("plateau (example table: over 50 mL/24 h on 5 of the last 7 covered days, CP)", () => {
  it.each([
    [[51, 51, 51, 51], false],
    [[51, 51, 51, 51, 50], false],
    [[51, 51, 51, 51, 50.001], true],
    [[51, 51, 51, 51, 20, 20, 51], true],
    [[51, 51, 51, 51, 20, 20, 20], false],
    [[51, 51, 51, 51, 51, 20, 20], true],
    [[51, 51, 51, 51, 51, 20, 20, 20], false],
    [[51, 20, 20, 20, 51, 51, 51, 51], false],
  ])("days of %j mL: %s", (volumes, stands) => {
    expect(plateauWhen(days(...volumes)) !== undefined).toBe(stands);
  });

  it("is told with its days, since when it stands, and its row", () => {
    expect(plateauWhen(days(10, 60, 60, 60, 60, 51, 50, 52))).toEqual({
      code: "plateau",
      from: "2026-11-09",
      to: "2026-11-15",
      covered: 7,
      over: 6,
      // The fifth day over the row was Fri 13; the row has been met with every day since.
      since: "2026-11-13",
      readings: ["tube-1 2026-11-13"],
      overMl: 50,
      days: 5,
      ofLast: 7,
      source: "CP",
    });
  });

  it("looks at covered days: one that nobody measured is neither over nor under", () => {
    const gap = [...daily("2026-11-12", [51, 51, 51, 51]), whole("2026-11-15", 51)];
    expect(plateauWhen({ readings: gap })).toMatchObject({ from: "2026-11-09", covered: 5, over: 5 });
    expect(plateauWhen({ readings: gap.slice(1) })).toBeUndefined();
  });

  it("counts anew after a change: what ran before it ran from another tube", () => {
    const upsized = make.upsized({ on: "2026-11-12", at: "00:00", size: make.F(12) });
    const entries = [drain(), upsized, well];
    expect(plateauWhen({ entries, ...days(60, 60, 60, 60, 60, 60, 60) })).toBeUndefined();
    expect(plateauWhen({ entries: [drain(), well], ...days(60, 60, 60, 60, 60, 60, 60) })).toBeDefined();
  });

  it("looks at a cavity as one: 30 and 25 are over 50", () => {
    const cavity = { organ: null, cavity: "left flank" };
    const two = [drain(cavity), drain({ ...cavity, tube: "tube-2", number: 2 }), well];
    const readings = [
      ...daily("2026-11-15", [30, 30, 30, 30, 30]),
      ...daily("2026-11-15", [25, 25, 25, 25, 25], { tubeId: "tube-2" }),
    ];
    expect(plateauWhen({ entries: two, readings })).toMatchObject({
      over: 5,
      readings: ["tube-1 2026-11-15"],
    });
    expect(plateauWhen({ readings: readings.slice(0, 5) })).toBeUndefined();
  });

  it("is of a collection that is open, and changes no verdict", () => {
    const week = days(60, 60, 60, 60, 60, 60, 60);
    expect(criterionWhen({ entries: [drain(), well], ...week }).kind).toBe("not met");
    const capped = make.capped({ on: "2026-11-02" });
    expect(plateauWhen({ entries: [drain(), capped, well], ...week })).toBeUndefined();
    const kidney = make.placed({ on: "2026-11-01" });
    expect(plateauWhen({ entries: [kidney, well], ...week })).toBeUndefined();
    expect(plateauWhen({ ...week, age: "under 18" })).toBeUndefined();
  });
});
