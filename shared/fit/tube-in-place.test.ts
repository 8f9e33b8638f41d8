import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import {
  changedSince,
  checkedOn,
  type InPlace,
  passageRowsOf,
  planBeside,
  seenCodes,
} from "#shared/fit/tube-in-place.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { type CheckedOn, checkedOnSchema } from "#shared/tube/exchange-planned.ts";
import { fold } from "#shared/tube/fold.ts";
import { cm, coaxial, exampleRows, F } from "#tests/factories/coaxial.ts";
import { exchangePlan, planRows, planTube } from "#tests/factories/planned-exchange.ts";
import { blank, bore, bores, inch, noRows, reported, takes } from "#tests/factories/tube-inside.ts";
import { checked, conditionsNoted, type Entry, placed, takenOver } from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";

/** The first tube of these entries as it is in on a day, under the example's rows, with its own open steps. */
function inPlace(today: string, ...entries: readonly Entry[]): InPlace {
  const state = fold(history(...entries));
  const [tube] = state.tubes;
  if (tube === undefined) throw new Error("no tube");
  const { conditions } = state;
  return {
    tube,
    steps: openSteps(state, books()),
    conditions,
    row: rowFor({ tube, conditions, age: "adult", protocol: exampleProtocol }),
    rows: exampleProtocol,
    today: day(today),
  };
}

describe("a tube as a plan is held against it", () => {
  it("has the facts of its record and the clinic's rows", () => {
    const facts = {
      takes: confirmed(inch(0.038)),
      fullLength: confirmed(cm(25)),
      externalLength: confirmed(cm(5)),
    };
    const of = inPlace("2026-08-24", placed({ facts }), checked({ on: "2026-08-20", concerns: ["crusted"] }));
    const { tube, rows } = planBeside(of);
    expect(tube).toMatchObject({
      kind: "nephrostomy",
      size: confirmed(F(8)),
      inside: { takes: confirmed(inch(0.038)) },
      concerns: ["crusted"],
      fullLength: confirmed(cm(25)),
      externalLength: confirmed(cm(5)),
      pastLatest: false,
      tractSince: "2026-08-14",
      today: "2026-08-24",
      tractAges: { immatureUnder: 14, matureFrom: 28 },
    });
    expect(rows).toEqual({
      passage: exampleRows,
      planning: exampleProtocol.planning,
      bleeding: exampleProtocol.bleeding,
    });
  });

  // The nephrostomy's latest is 90 days: 14 Aug + 90 = 12 Nov.
  it.each([
    ["2026-11-11", false],
    ["2026-11-12", false],
    ["2026-11-13", true],
  ])("on %s it is past its latest date: %s", (today, past) => {
    expect(planBeside(inPlace(today, placed())).tube.pastLatest).toBe(past);
  });

  it("a call that is late makes no tube late", () => {
    const of = inPlace("2026-09-01", placed());
    expect(of.steps.some(({ kind, latest }) => kind === "call" && latest !== null && latest < of.today)).toBe(
      true,
    );
    expect(planBeside(of).tube.pastLatest).toBe(false);
  });

  it("its tract counts from the latest plausible day, by the route, and by what slows it", () => {
    expect(planBeside(inPlace("2026-04-10", placed({ on: "2026-03" }))).tube.tractSince).toBe("2026-03-31");
    // Cholecystostomy: transhepatic 21 days, transperitoneal 42; of an unknown route the longest counts.
    const gall = (route: string | null) =>
      planBeside(inPlace("2026-08-24", placed({ kind: "cholecystostomy", route }))).tube.tractAges
        ?.immatureUnder;
    expect([gall("transhepatic"), gall("transperitoneal"), gall(null)]).toEqual([21, 42, 42]);
    const feeding = (...more: readonly Entry[]) =>
      planBeside(inPlace("2026-08-24", placed({ kind: "balloon gastrostomy" }), ...more)).tube.tractAges;
    const steroids = conditionsNoted({ conditions: { steroids: confirmed(true) } });
    const row = exampleProtocol.intervals.find(({ kind }) => kind === "balloon gastrostomy");
    expect(row?.immatureIfSlowUnder).not.toBe(row?.immatureUnder);
    expect(feeding()?.immatureUnder).toBe(row?.immatureUnder);
    expect(feeding(steroids)?.immatureUnder).toBe(row?.immatureIfSlowUnder);
  });

  it("an undated tract is at least as old as the first tube known to have lain in it; a date goes before that", () => {
    const since = (...entries: readonly Entry[]) =>
      planBeside(inPlace("2026-09-01", ...entries)).tube.tractSince;
    expect(since(placed({ on: "?", recordedOn: "2026-08-14" }))).toBeNull();
    expect(since(takenOver({ on: "2026-08-20" }))).toBe("2026-08-20");
    expect(since(takenOver({ on: "2026-08-20", tractSince: "2026-08-01" }))).toBe("2026-08-01");
  });

  it("without a row there are no ages", () => {
    const of = inPlace("2026-09-01", placed());
    expect(planBeside({ ...of, row: { found: "no row" } }).tube.tractAges).toBeNull();
  });
});

describe("rows for a measured bore", () => {
  it("are the clinic's; none is made for a child", () => {
    const { passage } = exampleProtocol;
    expect(passageRowsOf({ found: "no row" }, passage)).toEqual(exampleRows);
    expect(passageRowsOf({ found: "no example for a child" }, passage)).toEqual(noRows);
  });

  it("a null row is none", () => {
    const outsideTolerance = { wire: null, device: null, source: "CP" };
    expect(
      passageRowsOf({ found: "no row" }, { ...exampleProtocol.passage, outsideTolerance }),
    ).toMatchObject({
      outsideTolerance: { wire: undefined, device: undefined },
    });
  });
});

describe("what a plan was checked on", () => {
  const then: CheckedOn = {
    size: confirmed(F(8)),
    takes: unknownFact,
    bores: [bore("shaft", 0.075)],
    endHole: unknownFact,
    concerns: ["crusted"],
    fullLength: confirmed(cm(25)),
    externalLength: confirmed(cm(5)),
    retention: confirmed("locking loop"),
  };

  it("is every fact of the tube in place that an answer rests on, as it is kept", () => {
    const inside = bores(bore("shaft", 0.075));
    expect(checkedOn(planTube({ inside, concerns: ["crusted"] }))).toEqual(then);
    expect(checkedOnSchema.parse(then)).toEqual(then);
    expect(changedSince(then, { ...then })).toEqual([]);
  });

  it.each<[Partial<CheckedOn>, string]>([
    [{ size: confirmed(F(10)) }, "size"],
    [{ size: reported(F(8)) }, "size"],
    [{ takes: confirmed(inch(0.038)) }, "takes"],
    [{ bores: [bore("shaft", 0.075), bore("end hole", 0.035)] }, "bores"],
    [{ endHole: confirmed("closed") }, "endHole"],
    [{ concerns: [] }, "concerns"],
    [{ fullLength: unknownFact }, "fullLength"],
    [{ externalLength: confirmed(cm(6)) }, "externalLength"],
    [{ retention: confirmed("balloon") }, "retention"],
  ])("%j is another %s", (change, fact) => {
    expect(changedSince(then, { ...then, ...change })).toEqual([fact]);
  });

  it("names every fact that is another", () => {
    const now = checkedOn(planTube({ size: unknownFact, retention: unknownFact }));
    expect(changedSince(checkedOn(planTube()), now)).toEqual(["size", "retention"]);
  });
});

describe("what was seen, in codes", () => {
  const codes = (plan: Parameters<typeof exchangePlan>[0] = {}, tube: Parameters<typeof planTube>[0] = {}) =>
    seenCodes(exchangeAnswer(exchangePlan(plan), planTube(tube), { rows: planRows, shelf: [] }));

  it("says of each answer what it was", () => {
    expect(codes()).toEqual([
      "tube in place; by size; passes; label",
      "tube in place; by state; nothing recorded as present",
      "tube to come; by size; passes; label",
      "wire length; long enough",
      "step; no upsize",
      "tract; mature",
    ]);
  });

  it("where it stops, what is missing, and what is recorded of the state", () => {
    const inside = bores(bore("shaft", 0.075), bore("end hole", 0.035));
    const toCome = { ...exchangePlan().toCome, inside: bores(bore("hub", 0.075)), outside: unknownFact };
    const found = codes({ toCome }, { inside, concerns: ["crusted", "hard to flush"], tractSince: null });
    expect(found).toEqual([
      "tube in place; by size; does not pass; end hole",
      "tube in place; by state; in doubt; crusted; hard to flush",
      "tube to come; by size; cannot tell; bore end hole",
      "wire length; long enough",
      "step; cannot tell; size to come",
      "tract; cannot tell",
    ]);
  });

  it("of a stiffener and a sheath too", () => {
    const stiffener = coaxial("stiffener", { outside: F(5), inside: takes(0.038) });
    const found = codes(
      { stiffener, sheath: coaxial("sheath") },
      { inside: { ...blank, endHole: confirmed("closed") } },
    );
    expect(found).toEqual([
      "tube in place; by size; does not pass; closed end hole",
      "tube in place; by state; nothing recorded as present",
      "stiffener; by size; passes; label",
      "tube to come; by size; cannot tell; takes or bores",
      "sheath; by size; cannot tell; takes or bores",
      "wire length; cannot tell; length of what goes over the wire",
      "step; no upsize",
      "tract; mature",
    ]);
  });
});
