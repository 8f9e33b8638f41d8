import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { stepKinds } from "#shared/tube/step-kinds.ts";
import { fellOut, placed } from "#tests/support/factories.ts";
import { kindsAfter, stepAfter } from "#tests/support/steps.ts";
import { compareSteps, defaultOwner, isLooseEnd, isUrgent, type OpenStep, ownerOn } from "./step.ts";

/** Target Fri 30 Oct, latest Thu 12 Nov 2026; the row hands over 3 days past the target. */
const exchange = stepAfter([placed()], "exchange");

describe("who has a step", () => {
  it.each([
    ["a day before the target", "2026-10-29", "nurse", 0],
    ["on the target", "2026-10-30", "nurse", 0],
    ["two days past it", "2026-11-01", "nurse", 0],
    ["three days past it", "2026-11-02", "nurse", 1],
    ["a day before the latest date", "2026-11-11", "nurse", 1],
    ["on the latest date", "2026-11-12", "nurse", 1],
    ["a day past it", "2026-11-13", "physician", 2],
  ])("%s", (_name, today, role, rung) => {
    expect(ownerOn(exchange, day(today))).toEqual({ role, staffId: null, rung });
  });

  it("keeps a named owner up to the physician, and a named physician beyond", () => {
    const nurse: OpenStep = { ...exchange, owner: { role: "nurse", staffId: "n1" } };
    const physician: OpenStep = { ...exchange, owner: { role: "physician", staffId: "p1" } };
    expect(ownerOn(nurse, day("2026-11-02"))).toEqual({ role: "nurse", staffId: "n1", rung: 1 });
    expect(ownerOn(nurse, day("2026-11-13"))).toEqual({ role: "physician", staffId: null, rung: 2 });
    expect(ownerOn(physician, day("2026-11-13"))).toEqual({ role: "physician", staffId: "p1", rung: 2 });
  });

  it("stays with the owner where no date asks for more", () => {
    const undated = { ...exchange, escalatesOn: null, physicianOn: null };
    expect(ownerOn(undated, day("2199-12-31"))).toEqual({ role: "nurse", staffId: null, rung: 0 });
  });

  it("goes to the physician even where the latest date comes before the third day", () => {
    const tight = { ...exchange, escalatesOn: day("2026-11-20") };
    expect(ownerOn(tight, day("2026-11-13")).rung).toBe(2);
  });
});

describe("the order of steps", () => {
  const step = (change: Partial<OpenStep>): OpenStep => ({ ...exchange, ...change });

  it("puts what needs somebody now before any day", () => {
    const out = step({ kind: "tube out", dueOn: day("2026-12-01") });
    expect(compareSteps(out, exchange)).toBe(-1);
    expect(compareSteps(exchange, out)).toBe(1);
  });

  it.each([
    ["by day", { dueOn: day("2026-10-29"), id: "z" }],
    ["on one day by id", { id: "a" }],
  ])("%s", (_name, change) => {
    expect(compareSteps(step(change), exchange)).toBe(-1);
    expect(compareSteps(exchange, step(change))).toBe(1);
  });

  it("takes a step for its own equal", () => {
    expect(compareSteps(exchange, { ...exchange })).toBe(0);
  });

  it("is what openSteps comes in: a tube that is out stands before the other's call and exchange", () => {
    const right = placed({ tube: "tube-2", number: 2, side: "right", on: "2026-08-07" });
    const kinds = kindsAfter([right, placed(), fellOut({ on: "2026-08-20" })]);
    expect(kinds).toEqual(["tube out", "call", "exchange"]);
  });
});

describe("the kinds of step", () => {
  it("have an owner each, and are urgent, a loose end, or neither", () => {
    expect(Object.keys(defaultOwner).toSorted()).toEqual([...stepKinds].toSorted());
    expect(stepKinds.filter((kind) => isUrgent(kind) && isLooseEnd(kind))).toEqual([]);
  });
});
