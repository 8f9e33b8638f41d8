import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { ownerOn } from "#shared/step/step.ts";
import { fellOut, partlyDislodged, placed } from "#tests/support/factories.ts";
import { stepAfter } from "#tests/support/steps.ts";

/** The example's calls row, common practice, no source: three days past due the nurse takes it to a physician. */
describe("who has a step, day by day", () => {
  const rungs = (step: ReturnType<typeof stepAfter>, days: readonly string[]) =>
    days.map((on) => ownerOn(step, day(on)).rung);

  it("an exchange: the nurse, with a physician from three days past target, the physician from the day after latest", () => {
    const exchange = stepAfter([placed({ on: "2026-08-14" })], "exchange");
    expect(rungs(exchange, ["2026-11-01", "2026-11-02", "2026-11-12", "2026-11-13"])).toEqual([0, 1, 1, 2]);
  });

  it.each([
    ["a tube that is out", "tube out", fellOut({ on: "2026-09-01" })],
    ["a tube that is partly out", "part out", partlyDislodged({ on: "2026-09-01" })],
  ] as const)("%s is taken to a physician at once, who has it the next day", (_name, kind, event) => {
    const step = stepAfter([placed({ on: "2026-08-14" }), event], kind);
    expect(rungs(step, ["2026-09-01", "2026-09-02"])).toEqual([1, 2]);
  });

  it("a call that nobody made never asks a physician later than it hands over to one", () => {
    const call = stepAfter([placed({ on: "2026-08-14" })], "call");
    expect(call.physicianOn).toBeNull();
    expect(rungs(call, ["2026-08-17", "2026-08-20"])).toEqual([0, 1]);
  });
});
