import { describe, expect, it } from "vitest";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import {
  balloonChecked,
  bled,
  blocked,
  called,
  checked,
  exchanged,
  factsNoted,
  infected,
  leaking,
  placed,
  planRecorded,
  removalDecided,
  removed,
  repositioned,
  suctionChanged,
  takenOver,
  tipPosition,
  trialPassed,
  trialStarted,
} from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, stepsAfter, whyCodes } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";

/** Fri 14 Aug 2026, Monday to Friday. Dates are arithmetic from the rows of the example table. */
const open = placed();
const reached = called({ on: "2026-08-17" });

describe("an alarm", () => {
  it("is one a tube, with its reasons inside, due when the first was recorded, and comes first", () => {
    const entries = [
      open,
      leaking({ on: "2026-08-20" }),
      blocked({ on: "2026-08-19" }),
      bled({ on: "2026-08-21" }),
    ];
    const [first] = stepsAfter(entries);
    expect(first).toMatchObject({ kind: "alarm", dueOn: "2026-08-19", owner: { role: "nurse" } });
    expect(first?.why.map(({ args }) => [args.trouble, args.level])).toEqual([
      ["blocked", "same day"],
      ["leaking", null],
      ["bled", "same day"],
    ]);
  });

  it("says how soon and what holds until somebody is reached, by the row", () => {
    const step = stepAfter([open, bled({ heavy: unknownFact })], "alarm");
    expect(step.why[0]?.args).toEqual({
      trouble: "bled",
      level: "emergency services",
      untilReached: "keep the tube",
    });
  });

  it("is gone once somebody has looked", () => {
    expect(kindsAfter([open, blocked(), checked({ on: "2026-08-20" })])).not.toContain("alarm");
  });

  it("stands beside a removal that was only told", () => {
    const told = removed({ on: "2026-08-20", toldBy: "the ward" });
    expect(kindsAfter([open, infected(), told])).toContain("alarm");
  });
});

describe("a clamp trial that runs", () => {
  // Calls on days 1, 2, 7, 14 from Fri 21 Aug 2026: Sat 22, Sun 23, Fri 28 Aug, Fri 4 Sep.
  const began = [open, reached, trialStarted({ on: "2026-08-21" })];
  const calls = (...on: readonly string[]) => on.map((each) => called({ on: each }));

  it.each([
    [[], "2026-08-22"],
    [["2026-08-22"], "2026-08-23"],
    [["2026-08-22", "2026-08-23"], "2026-08-28"],
    [["2026-08-22", "2026-08-23", "2026-08-28"], "2026-09-04"],
    [["2026-08-22", "2026-08-23", "2026-08-28", "2026-09-04"], "2026-09-04"],
  ])("after calls %j is due on %s, in days and not in working days", (on, due) => {
    const step = stepAfter([...began, ...calls(...on)], "clamp trial");
    expect(dates(step)).toEqual([null, due, "2026-09-04"]);
  });

  it("hard case 40: a call on a closed day asks who covers it, or says who does", () => {
    expect(stepAfter(began, "clamp trial").why.at(-1)).toMatchObject({
      code: "trial-closed-day",
      args: { day: "2026-08-22", covers: null },
    });
    const covered = [open, reached, trialStarted({ on: "2026-08-21", covers: "the ward" })];
    expect(stepAfter(covered, "clamp trial").why.at(-1)?.args.covers).toBe("the ward");
    expect(whyCodes(stepAfter([open, reached, trialStarted({ on: "2026-08-17" })], "clamp trial"))).toEqual([
      "trial-running",
    ]);
  });

  it("of an unknown day, or under a table without its row, is due at once", () => {
    const undated = trialStarted({ on: "?", recordedOn: "2026-08-21" });
    expect(stepAfter([open, undated], "clamp trial").dueOn).toBe("2026-08-21");
    const noCalls = books();
    const without = { ...noCalls, protocol: () => ({ ...noCalls.protocol(1), calls: null }) };
    expect(whyCodes(stepAfter(began, "clamp trial", without))).toEqual(["trial-undated"]);
    const over = takenOver({ mode: "on a clamp trial", on: "2026-08-07", recordedOn: "2026-08-14" });
    expect(stepAfter([over], "clamp trial").dueOn).toBe("2026-08-14");
  });

  it("passed, asks for a decision, until one is recorded", () => {
    const passed = [...began, trialPassed({ on: "2026-08-25" })];
    expect(whyCodes(stepAfter(passed, "review"))).toEqual(["trial-passed"]);
    for (const answer of [
      checked({ on: "2026-08-26" }),
      planRecorded({ on: "2026-08-26", act: "exchange", by: "2026-10-30" }),
      removalDecided({ on: "2026-08-26" }),
      exchanged({ on: "2026-08-26" }),
    ])
      expect(kindsAfter([...passed, answer])).not.toContain("review");
  });

  it("set to suction, it is over", () => {
    expect(kindsAfter([...began, suctionChanged({ on: "2026-08-22" })])).not.toContain("clamp trial");
  });

  it("of a collection: its outcome and the row's review are one step, due on the earlier day", () => {
    const drain = placed({ kind: "abscess drain", side: "not sided" });
    const passed = [drain, reached, trialStarted({ on: "2026-08-17" }), trialPassed({ on: "2026-08-19" })];
    const step = stepAfter(passed, "review");
    expect(step.dueOn).toBe("2026-08-19");
    expect(whyCodes(step)).toContain("row");
    expect(whyCodes(step)).toContain("trial-passed");
  });
});

describe("water in the balloon", () => {
  const g = placed({ kind: "balloon gastrostomy", side: "not sided" });

  it("is first checked on day 14 to 28, then every 7 days", () => {
    // Fri 28 Aug, Fri 11 Sep 2026; then Mon 31 Aug + 7, Mon 7 Sep.
    expect(dates(stepAfter([g], "balloon check"))).toEqual(["2026-08-28", "2026-08-28", "2026-09-11"]);
    const once = [g, balloonChecked({ on: "2026-08-31" })];
    expect(dates(stepAfter(once, "balloon check"))).toEqual(["2026-09-07", "2026-09-07", null]);
  });

  it("starts anew with a new catheter", () => {
    const renewed = [g, balloonChecked({ on: "2026-08-31" }), exchanged({ on: "2026-09-04" })];
    expect(stepAfter(renewed, "balloon check").target).toBe("2026-09-18");
  });

  it("is asked of what holds the tube, not of its kind alone", () => {
    const loop = factsNoted({ facts: { retention: confirmed("locking loop") } });
    expect(kindsAfter([g, loop])).not.toContain("balloon check");
    const held = placed({ kind: "venting gastrostomy", facts: { retention: confirmed("balloon") } });
    expect(kindsAfter([held])).toContain("balloon check");
    expect(kindsAfter([open])).not.toContain("balloon check");
  });

  it("of an unknown day is due when it was recorded", () => {
    const undated = takenOver({
      kind: "balloon gastrostomy",
      side: "not sided",
      on: "?",
      recordedOn: "2026-08-14",
    });
    expect(stepAfter([undated], "balloon check").dueOn).toBe("2026-08-14");
    const check = balloonChecked({ on: "?", recordedOn: "2026-08-28" });
    expect(stepAfter([g, check], "balloon check").dueOn).toBe("2026-08-28");
  });

  it("taken over after its first window is asked about on the day it was recorded, and is late by no date that nobody set", () => {
    const g = { kind: "balloon gastrostomy", side: "not sided", on: "2026-06-01" } as const;
    // 1 Jun + 28 = 29 Jun: recorded that day it has its window, a day later nobody knows of the check.
    const inTime = stepAfter([takenOver({ ...g, recordedOn: "2026-06-29" })], "balloon check");
    expect(dates(inTime)).toEqual(["2026-06-15", "2026-06-15", "2026-06-29"]);
    const after = stepAfter([takenOver({ ...g, recordedOn: "2026-06-30" })], "balloon check");
    expect([after.dueOn, after.latest]).toEqual(["2026-06-30", null]);
  });

  it("lost, it is said; what was lost cannot be told where a volume is unknown", () => {
    const unseen = balloonChecked({ on: "2026-08-28", found: unknownFact });
    expect(whyCodes(stepAfter([g, unseen], "balloon check"))).toContain("balloon-loss-unknown");
  });
});

describe("the tip", () => {
  it("of a kind without a row is asked about only when it is known not to be in place", () => {
    expect(kindsAfter([open, repositioned()])).not.toContain("tip position");
    expect(kindsAfter([open, tipPosition({ inPlace: unknownFact })])).not.toContain("tip position");
    const out = tipPosition({ on: "2026-08-20", inPlace: confirmed(false) });
    expect(stepAfter([open, out], "tip position").dueOn).toBe("2026-08-20");
  });

  it("seen, with nobody able to tell, is still to be confirmed", () => {
    const gj = placed({ kind: "gastrojejunostomy", side: "not sided" });
    expect(kindsAfter([gj, tipPosition({ inPlace: unknownFact })])).toContain("tip position");
  });

  it("is confirmed again after so many days, where the row says so", () => {
    const gj = placed({ kind: "gastrojejunostomy", side: "not sided" });
    const again = books();
    const protocol = {
      ...again.protocol(1),
      tips: [{ kind: "gastrojejunostomy" as const, within: 0, again: 30, source: "CP" }],
    };
    const of = { ...again, protocol: () => protocol };
    // 30 days from Fri 14 Aug 2026: Sun 13 Sep.
    expect(stepAfter([gj, tipPosition()], "tip position", of).dueOn).toBe("2026-09-13");
  });
});
