import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { segmentCuts } from "#shared/output/segment-cuts.ts";
import { confirmed, type Fact } from "#shared/tube/certainty.ts";
import { decide } from "#shared/tube/decide.ts";
import { fold } from "#shared/tube/fold.ts";
import { tubeTitle } from "#shared/tube/name.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { stepStanding } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";
import {
  balloonChecked,
  called,
  type Entry,
  exchanged,
  exchangePlanned,
  F,
  placed,
  reconcileAsked,
  reconciled,
  repositioned,
  stepAssigned,
  tipPosition,
  trialFailed,
  trialStarted,
  whereaboutsNoted,
} from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, stepsAfter, whyCodes } from "#tests/support/steps.ts";
import { command, history, now } from "#tests/support/told.ts";
import { ownerOn } from "./step.ts";

/** Cases of a tube's course that a simple tracker gets wrong. Dates are arithmetic from the rows of the example table. */

const tubesAfter = (...entries: readonly Entry[]) => fold(history(...entries)).tubes;

describe("hard case 9: balloon found 8, refilled to 10, every week", () => {
  const gastrostomy = placed({
    kind: "balloon gastrostomy",
    side: "not sided",
    facts: { balloonMl: confirmed(10) },
  });
  /** Fri 28 Aug, 4 and 11 Sep 2026. */
  const check = (on: string, found: number) =>
    balloonChecked({ on, found: confirmed(found), refilled: confirmed(10) });
  const losing = (...found: readonly number[]) => [
    gastrostomy,
    ...found.map((ml, week) => check(["2026-08-28", "2026-09-04", "2026-09-11"][week]!, ml)),
  ];

  it("the loss is what was last filled less what is found, each week anew", () => {
    expect(tubesAfter(...losing(8, 8, 8))[0]?.balloon?.lossesMl).toEqual([2, 2, 2]);
  });

  it.each([
    ["at the row's 0.5 mL is no question", [9.5], []],
    ["over it is a question in the next check", [9.4], ["balloon-loss"]],
    ["made good is none any more", [9.4, 10], []],
  ])("a loss %s", (_name, found, lines) => {
    const step = stepAfter(losing(...found), "balloon check");
    expect(whyCodes(step).filter((code) => code.startsWith("balloon-loss"))).toEqual(lines);
    expect(kindsAfter(losing(...found))).not.toContain("alarm");
  });

  it("a rising loss speaks before the tube falls out: two in a row are an alarm", () => {
    const step = stepAfter(losing(10, 9.4, 9), "alarm");
    expect(step.dueOn).toBe("2026-09-11");
    expect(step.why.map(whySentence)).toEqual([
      "Water lost at the last checks: 0.6, 1 mL, each over 0.5 mL (source 15; rest CP).",
    ]);
    expect(stepsAfter(losing(10, 9.4, 9))[0]?.kind).toBe("alarm");
  });

  it("refills are no output: nothing of a check touches the output's segments, or either clock", () => {
    const story = tubesAfter(...losing(8, 8))[0]!.story;
    expect(segmentCuts(story, zone("Europe/London"))).toEqual([]);
    expect(stepAfter(losing(8, 8), "exchange")).toEqual(stepAfter([gastrostomy], "exchange"));
  });
});

describe("hard case 20: gastrojejunostomy in place, its tip back in the stomach", () => {
  const entries = [
    placed({ kind: "gastrojejunostomy", side: "not sided" }),
    tipPosition({ inPlace: confirmed(true) }),
  ];
  const back = tipPosition({ on: "2026-09-10", inPlace: confirmed(false), where: "back in the stomach" });

  it("the tip has a date of its own: due with the placement, gone once it is confirmed", () => {
    expect(stepAfter(entries.slice(0, 1), "tip position").dueOn).toBe("2026-08-14");
    expect(kindsAfter(entries)).not.toContain("tip position");
  });

  it("back in the stomach, it asks at once; the tube is in, and its exchange date stands", () => {
    const step = stepAfter([...entries, back], "tip position");
    expect(step.dueOn).toBe("2026-09-10");
    expect(whyCodes(step)).toEqual(["tip-not-in-place"]);
    expect(tubesAfter(...entries, back)[0]?.status).toBe("in");
    expect(stepAfter([...entries, back], "exchange")).toEqual(stepAfter(entries, "exchange"));
  });

  it("repositioned, it is to be confirmed again; then it is done", () => {
    const moved = [...entries, back, repositioned({ on: "2026-09-11" })];
    expect(stepAfter(moved, "tip position")).toMatchObject({ dueOn: "2026-09-11" });
    expect(whyCodes(stepAfter(moved, "tip position"))).toEqual(["tip-to-confirm"]);
    expect(kindsAfter([...moved, tipPosition({ on: "2026-09-11" })])).not.toContain("tip position");
  });

  it("every new catheter asks again", () => {
    expect(stepAfter([...entries, exchanged({ on: "2026-11-20" })], "tip position").dueOn).toBe("2026-11-20");
  });
});

describe("hard case 23: left and right swapped in a report; one patient under two numbers", () => {
  const both = [placed({ side: "left" }), placed({ side: "right", tube: "tube-2", number: 2, size: F(10) })];
  const asked = reconcileAsked({ on: "2026-08-20", says: "The report has 10 F on the left." });
  const found = (tube: string, number: number, side: Side) => ({
    tube,
    number,
    side: confirmed(side) as Fact<Side>,
  });
  const swap = reconciled({
    on: "2026-08-24",
    sides: [found("tube-1", 1, "right"), found("tube-2", 2, "left")],
  });
  const titles = (...entries: readonly Entry[]) => tubesAfter(...entries).map(tubeTitle);

  it("is a step until somebody reconciles; no side changes by itself", () => {
    const step = stepAfter([...both, asked], "reconcile");
    expect(step).toMatchObject({ tubeId: null, dueOn: "2026-08-20" });
    expect(step.why.map(whySentence)).toEqual(["Not agreed: sides. The report has 10 F on the left."]);
    expect(titles(...both, asked)).toEqual(["Left nephrostomy", "Right nephrostomy"]);
  });

  it("both sides are set in one act, in words, and the step is gone; clocks and sizes stay where they are", () => {
    const after = [...both, asked, swap];
    expect(titles(...after)).toEqual(["Right nephrostomy", "Left nephrostomy"]);
    expect(kindsAfter(after)).toEqual(kindsAfter(both));
    expect(tubesAfter(...after).map(({ size }) => size)).toEqual([confirmed(F(8)), confirmed(F(10))]);
  });

  it("two records of one patient stand open apart from the sides", () => {
    const two = reconcileAsked({
      about: "two records of one patient",
      says: "The same birth date and address.",
    });
    expect(kindsAfter([...both, two, swap]).filter((kind) => kind === "reconcile")).toHaveLength(1);
    const settled = reconciled({ on: "2026-08-25", about: "two records of one patient" });
    expect(kindsAfter([...both, two, settled])).not.toContain("reconcile");
  });

  it("a tube of nobody here is refused", () => {
    const wrong = reconciled({ on: "2026-08-24", sides: [found("tube-3", 3, "left")] });
    expect(decide(history(...both), command(wrong), now("2026-08-24"))).toMatchObject({
      refusals: [{ code: "tube-unknown" }],
    });
  });
});

describe("hard case 25: rebooked three times", () => {
  // 77 and 90 days from Fri 14 Aug 2026: Fri 30 Oct, Thu 12 Nov.
  const rebooked = [
    placed(),
    called({ on: "2026-08-17" }),
    exchangePlanned({ on: "2026-10-20", planned: "2026-10-30" }),
    exchangePlanned({ on: "2026-10-30", planned: "2026-11-06" }),
    called({ on: "2026-11-05" }),
    exchangePlanned({ on: "2026-11-06", planned: "2026-11-13" }),
    called({ on: "2026-11-12" }),
  ];

  it("escalates by the tube's age, not by the last contact", () => {
    const step = stepAfter(rebooked, "exchange");
    expect(dates(step)).toEqual(["2026-10-16", "2026-10-30", "2026-11-12"]);
    expect([step.escalatesOn, step.physicianOn]).toEqual(["2026-11-02", "2026-11-13"]);
    expect(step).toEqual(stepAfter([placed()], "exchange"));
  });

  it.each([
    ["2026-11-01", 0],
    ["2026-11-02", 1],
    ["2026-11-12", 1],
    ["2026-11-13", 2],
  ])(
    "on %s it is with rung %i, whoever was called the day before and whoever has it by name",
    (today, rung) => {
      const given = [
        ...rebooked,
        stepAssigned({ on: "2026-11-12", owner: { role: "nurse", staffId: "staff-1" } }),
      ];
      expect(ownerOn(stepAfter(rebooked, "exchange"), day(today)).rung).toBe(rung);
      expect(ownerOn(stepAfter(given, "exchange"), day(today)).rung).toBe(rung);
    },
  );
});

describe("hard case 26: an inpatient at call time", () => {
  const inpatient = whereaboutsNoted({ on: "2026-08-17", where: "ward 4" });
  const entries = [placed(), inpatient];

  it("whereabouts are asked again in 3 days, by the row", () => {
    const step = stepAfter(entries, "whereabouts");
    expect(step).toMatchObject({ tubeId: null, dueOn: "2026-08-20", owner: { role: "caller" } });
    expect(stepStanding(step, day("2026-08-18"))).toBe("asked again in 2 days");
  });

  it("told again, the days count from then; at home, nothing is asked any more", () => {
    const again = whereaboutsNoted({ on: "2026-08-20" });
    expect(stepAfter([...entries, again], "whereabouts").dueOn).toBe("2026-08-23");
    const home = whereaboutsNoted({ on: "2026-08-22", place: "at home" });
    expect(kindsAfter([...entries, again, home])).toEqual(kindsAfter([placed()]));
  });

  it("the ward is rung about the tube, and the tube's clock does not wait", () => {
    const call = stepAfter(entries, "call");
    expect(dates(call)).toEqual(dates(stepAfter([placed()], "call")));
    expect(call.why.map(whySentence)).toContain("An inpatient on ward 4: the ward is rung about the tube.");
    expect(stepAfter(entries, "exchange")).toEqual(stepAfter([placed()], "exchange"));
  });
});

describe("hard case 36: a clamp trial started five days before the exchange is due, and failed", () => {
  const began = [placed(), called({ on: "2026-08-17" }), trialStarted({ on: "2026-10-25" })];
  const failed = [...began, trialFailed({ on: "2026-10-28" })];
  const before = stepAfter([placed()], "exchange");

  it("the exchange date stood all the while", () => {
    expect(before.target).toBe("2026-10-30");
    expect(stepAfter(began, "exchange")).toEqual(before);
    expect(stepAfter(failed, "exchange")).toEqual(before);
  });

  it("the trial is a step beside it while it runs, and its outcome asks for a decision", () => {
    // The call weeks before the exchange is beside both: nobody was reached since.
    expect(kindsAfter(began)).toEqual(["call", "clamp trial", "exchange"]);
    const review = stepAfter(failed, "review");
    expect(review).toMatchObject({ dueOn: "2026-10-28", owner: { role: "physician" } });
    expect(whyCodes(review)).toEqual(["trial-failed"]);
  });
});
