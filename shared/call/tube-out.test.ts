import { describe, expect, it } from "vitest";
import { addDays, day } from "#shared/day/day.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { findRow } from "#shared/protocol/find-row.ts";
import { tubeOutRow } from "#shared/protocol/find-tube-out.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { flagOfOut, oneBelow, rowSays, type Tract, tractOut } from "./tube-out.ts";

const table = exampleProtocol;

/** A tract by the example row of its kind, punctured on Fri 6 Nov 2026. */
function tractOf(
  kind: TubeKind,
  { slowToHeal = false, route = null }: { slowToHeal?: boolean; route?: string | null } = {},
): Tract {
  const found = findRow(table, { kind, factors: [], under18: false, firstCatheter: true });
  if (found.found !== "row") throw new Error(`the example table has no row for ${kind}`);
  return { since: day("2026-11-06"), ages: tractAges(found.row, { route, slowToHeal }) };
}

/** Ages of tracts by the example rows: immature under 14 days, mature from 28 (nephrostomy), common practice; worked by hand from the day of the puncture. */
describe("a tract on the day on which its tube came out", () => {
  it.each([
    ["a nephrostomy of nine days: immature", tractOf("nephrostomy"), "2026-11-15", 9, "immature"],
    ["of 13 days: immature", tractOf("nephrostomy"), "2026-11-19", 13, "immature"],
    ["of 14 days: cannot be called mature", tractOf("nephrostomy"), "2026-11-20", 14, "neither"],
    ["of 27 days: cannot be called mature", tractOf("nephrostomy"), "2026-12-03", 27, "neither"],
    ["of 28 days: mature", tractOf("nephrostomy"), "2026-12-04", 28, "mature"],
    ["on the day of the puncture", tractOf("nephrostomy"), "2026-11-06", 0, "immature"],
    ["before the latest plausible puncture", tractOf("nephrostomy"), "2026-11-01", 0, "immature"],
  ])("%s", (_, tract, on, age, stands) => {
    expect(tractOut(tract, day(on))).toEqual({
      age,
      maturity: stands,
      first: stands === "mature" ? "mature" : "immature",
      unknown: [],
    });
  });

  it("of an unknown age cannot be told, and is shown as immature", () => {
    // Nobody knows when it came out: no age, however old the tract is today.
    expect(tractOut({ ...tractOf("nephrostomy"), since: day("2020-01-01") }, null)).toMatchObject({
      age: null,
      maturity: "cannot tell",
      first: "immature",
      unknown: ["out"],
    });
    expect(tractOut({ ...tractOf("nephrostomy"), since: null }, day("2026-11-15"))).toEqual({
      age: null,
      maturity: "cannot tell",
      first: "immature",
      unknown: ["puncture"],
    });
    expect(tractOut({ ...tractOf("nephrostomy"), since: null }, null).unknown).toEqual(["puncture", "out"]);
  });

  it("without a row is shown as immature, however old", () => {
    expect(tractOut({ since: day("2025-01-01"), ages: null }, day("2026-11-15"))).toMatchObject({
      maturity: "no row",
      first: "immature",
    });
  });

  it("of somebody slow to heal stays immature longer, where the row says so", () => {
    const [usual, slow] = [
      tractOf("venting gastrostomy"),
      tractOf("venting gastrostomy", { slowToHeal: true }),
    ];
    const stands = (tract: Tract, days: number) => tractOut(tract, addDays(day("2026-11-06"), days)).maturity;
    const [from, to] = [usual.ages?.immatureUnder ?? 0, slow.ages?.immatureUnder ?? 0];
    expect([from, to]).toEqual([28, 42]);
    expect([stands(usual, 27), stands(slow, 27)]).toEqual(["immature", "immature"]);
    expect([stands(usual, 28), stands(slow, 28), stands(slow, 41)]).toEqual([
      "mature",
      "immature",
      "immature",
    ]);
    expect(stands(slow, 42)).toBe("mature");
  });
});

describe("what the row of a tube that is out says", () => {
  const row = tubeOutRow(table, "nephrostomy", "out");

  it.each([
    ["immature", "ring now, likely a new access", null],
    ["neither", "ring now, likely a new access", "same day; the tract stays open about 8-24 h"],
    ["cannot tell", "ring now, likely a new access", "same day; the tract stays open about 8-24 h"],
    ["no row", "ring now, likely a new access", "same day; the tract stays open about 8-24 h"],
    ["mature", "same day; the tract stays open about 8-24 h", null],
  ] as const)("of a tract that is %s", (stands, says, ifMature) => {
    if (row === undefined) throw new Error("the example table has no row for a nephrostomy that is out");
    const first = stands === "mature" ? "mature" : "immature";
    expect(rowSays(row, { maturity: stands, first })).toEqual({ says, ifMature });
  });

  it("is said once where both tracts have the same words", () => {
    const chest = tubeOutRow(table, "chest tube", "out");
    if (chest === undefined) throw new Error("the example table has no row for a chest tube that is out");
    expect(rowSays(chest, { maturity: "cannot tell", first: "immature" })).toEqual({
      says: "emergency",
      ifMature: null,
    });
  });
});

describe("the size one usual step below", () => {
  it.each([
    ["10 F less 2 F is 8 F", confirmed(lengthOf(10, "F")), lengthOf(8, "F")],
    ["2 F leaves nothing", confirmed(lengthOf(2, "F")), null],
    ["an unknown size cannot be told", unknownFact, null],
  ])("%s", (_, size, below) => expect(oneBelow(size, { usualStepF: 2 })).toBe(below));

  it("without a row cannot be told", () => expect(oneBelow(confirmed(lengthOf(10, "F")), null)).toBeNull());
});

describe("the red flag of a tube that comes out, by the clinic's question", () => {
  const flag = (kind: TubeKind) => {
    const state = fold(history(placed({ kind })));
    const [tube] = state.tubes;
    if (tube === undefined) throw new Error("no tube");
    return flagOfOut(tube, state, table)?.id;
  };

  it("of a nephrostomy and of a chest tube", () => {
    expect([flag("nephrostomy"), flag("chest tube")]).toEqual(["out or partly out", "chest tube out"]);
  });

  it("none where the table asks no such question", () => {
    const state = fold(history(placed()));
    const [tube] = state.tubes;
    if (tube === undefined) throw new Error("no tube");
    expect(flagOfOut(tube, state, { redFlags: table.redFlags, calls: null })).toBeNull();
  });
});
