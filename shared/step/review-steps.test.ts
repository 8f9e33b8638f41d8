import { describe, expect, it } from "vitest";
import type { Reading } from "#shared/output/reading.ts";
import { decidedKinds } from "#shared/review/decisions.ts";
import { at, reading } from "#tests/factories/reading.ts";
import {
  called,
  capped,
  checked,
  downsized,
  exchanged,
  factsNoted,
  fluidTested,
  handedOver,
  placed,
  planRecorded,
  repositioned,
  suctionChanged,
  trialFailed,
  trialStarted,
  upsized,
} from "#tests/support/factories.ts";
import { decisionDone, reviewAsked, reviewDecided } from "#tests/support/review-factories.ts";
import { dates, kindsAfter, stepAfter, whyCodes } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";

/** Fri 14 Aug 2026: an abscess drain is reviewed after 14 days and at the latest after 90 (the example's rows, common practice). */
const drain = placed({ kind: "abscess drain", side: "not sided" });
const nephrostomy = placed();
const reached = called({ on: "2026-08-17" });

describe("what a review decides", () => {
  it("leave in, review on: the next review is on that day, its latest stays the row's", () => {
    const step = stepAfter(
      [drain, reviewDecided({ on: "2026-08-26", decided: [["leave in", "2026-09-09"]] })],
      "review",
    );
    expect(dates(step)).toEqual([null, "2026-09-09", "2026-11-12"]);
    expect(whyCodes(step)).toContain("review-on");
  });

  it("a review that sets no day is counted from like a check", () => {
    const entries = [drain, reviewDecided({ on: "2026-08-26", decided: [["imaging", "2026-08-28"]] })];
    const step = stepAfter(entries, "review");
    // 26 Aug + 14 days
    expect(step.target).toBe("2026-09-09");
    expect(whyCodes(step)).toContain("reviewed");
  });

  it("a decision that does not name the review leaves it due", () => {
    const entries = [
      drain,
      reviewDecided({ on: "2026-08-26", decided: [["imaging", "2026-08-28"]], closes: [] }),
    ];
    expect(stepAfter(entries, "review").target).toBe("2026-08-28");
    expect(kindsAfter(entries)).toContain("imaging");
  });

  it("each thing decided is a step with its day and its owner", () => {
    const step = stepAfter(
      [drain, reviewDecided({ decided: [["tube check", "2026-08-28"]], words: "hub leaks" })],
      "tube check",
    );
    expect(dates(step)).toEqual([null, "2026-08-28", "2026-08-28"]);
    expect(step.owner).toEqual({ role: "nurse", staffId: null });
    expect(step.why.map(({ code }) => code)).toEqual(["decided", "decided-words"]);
  });

  it("remove: out by that day, and the row's latest for the drain stands beside it", () => {
    const entries = [drain, reviewDecided({ on: "2026-08-26", decided: [["remove", "2026-08-28"]] })];
    expect(stepAfter(entries, "remove").target).toBe("2026-08-28");
    expect(kindsAfter(entries)).toContain("review");
  });

  it("what is decided anew stands in the place of what was decided before", () => {
    const entries = [
      drain,
      reviewDecided({ on: "2026-08-26", decided: [["imaging", "2026-08-28"]] }),
      reviewDecided({ on: "2026-08-27", decided: [["imaging", "2026-09-03"]] }),
    ];
    expect(stepAfter(entries, "imaging").target).toBe("2026-09-03");
  });

  it("a later decision closes an earlier one only by name", () => {
    const first = reviewDecided({
      on: "2026-08-26",
      decided: [
        ["imaging", "2026-08-28"],
        ["refer", "2026-08-31"],
      ],
    });
    const next = reviewDecided({
      on: "2026-08-27",
      decided: [["upsize", "2026-09-03"]],
      closes: ["imaging"],
    });
    const kinds = kindsAfter([drain, first, next]);
    expect(kinds).toEqual(expect.arrayContaining(["refer", "upsize"]));
    expect(kinds).not.toContain("imaging");
  });
});

describe("hard case 36: a clamp trial that a review decided, and the exchange", () => {
  // 63, 77 and 90 days from 14 Aug 2026, by the example's row of a nephrostomy.
  const exchange = ["2026-10-16", "2026-10-30", "2026-11-12"];
  const decided = reviewDecided({ on: "2026-10-25", decided: [["cap or clamp trial", "2026-10-27"]] });

  it.each([
    ["decided", [nephrostomy, reached, decided]],
    ["started", [nephrostomy, reached, decided, trialStarted({ on: "2026-10-25" })]],
    [
      "failed",
      [nephrostomy, reached, decided, trialStarted({ on: "2026-10-25" }), trialFailed({ on: "2026-10-27" })],
    ],
  ])("%s: the date of the exchange stands all the while", (_name, entries) => {
    expect(dates(stepAfter(entries, "exchange"))).toEqual(exchange);
  });

  it("a review set for a tube that is exchanged by its row is a step of its own", () => {
    const entries = [
      nephrostomy,
      reached,
      reviewDecided({ on: "2026-09-01", decided: [["leave in", "2026-09-14"]] }),
    ];
    expect(stepAfter(entries, "review").target).toBe("2026-09-14");
    expect(dates(stepAfter(entries, "exchange"))).toEqual(exchange);
  });
});

describe("what was decided is done", () => {
  const entry = {
    "flush differently": factsNoted({
      on: "2026-08-28",
      facts: { flushOrder: { certainty: "confirmed", value: "none" } },
    }),
    "to suction": suctionChanged({ on: "2026-08-28" }),
    reposition: repositioned({ on: "2026-08-28" }),
    upsize: upsized({ on: "2026-08-28" }),
    downsize: downsized({ on: "2026-08-28" }),
    "second drain": decisionDone({ on: "2026-08-28", what: "second drain" }),
    "tube check": checked({ on: "2026-08-28" }),
    imaging: decisionDone({ on: "2026-08-28", what: "imaging" }),
    "fluid tests": fluidTested({ on: "2026-08-28" }),
    "cap or clamp trial": trialStarted({ on: "2026-08-28" }),
    refer: decisionDone({ on: "2026-08-28", what: "refer" }),
    "hand over": handedOver({ on: "2026-08-28" }),
  } as const;

  it.each(decidedKinds)("%s, by the entry that records it, and nothing else is closed", (what) => {
    const other = what === "refer" ? "imaging" : "refer";
    const decided = reviewDecided({
      on: "2026-08-26",
      decided: [
        [what, "2026-08-31"],
        [other, "2026-08-31"],
      ],
    });
    const kinds = kindsAfter([drain, decided, entry[what]]);
    expect(kinds).not.toContain(what);
    expect(kinds).toContain(other);
  });

  it("a cap is a trial begun; an exchange is no upsize", () => {
    const trial = reviewDecided({ on: "2026-08-26", decided: [["cap or clamp trial", "2026-08-31"]] });
    expect(kindsAfter([drain, trial, capped({ on: "2026-08-28" })])).not.toContain("cap or clamp trial");
    const upsize = reviewDecided({ on: "2026-08-26", decided: [["upsize", "2026-08-31"]] });
    expect(kindsAfter([drain, upsize, exchanged({ on: "2026-08-28" })])).toContain("upsize");
  });

  it("whoever was given it by name keeps it over an exchange", () => {
    const decided = reviewDecided({ on: "2026-08-26", decided: [["refer", "2026-08-31"]] });
    const step = stepAfter([drain, decided, exchanged({ on: "2026-08-28" })], "refer");
    expect(step.owner.role).toBe("nurse");
    expect(step.target).toBe("2026-08-31");
  });
});

describe("a review that is asked for", () => {
  it("is due on its day, says by whom and why, and a decision that names it answers it", () => {
    const asked = reviewAsked({ on: "2026-08-18", by: "2026-08-20" });
    const step = stepAfter([nephrostomy, reached, asked], "review");
    expect(step).toMatchObject({ target: "2026-08-20", owner: { role: "physician" } });
    expect(step.why[0]).toMatchObject({ code: "review-asked", args: { askedBy: "the home nurse" } });
    const decided = reviewDecided({ on: "2026-08-20", decided: [["imaging", "2026-08-24"]] });
    expect(kindsAfter([nephrostomy, reached, asked, decided])).not.toContain("review");
  });

  it("comes before the review of the row, in one step with both reasons", () => {
    const step = stepAfter([drain, reviewAsked({ on: "2026-08-18", by: "2026-08-20" })], "review");
    expect(step.dueOn).toBe("2026-08-20");
    expect(whyCodes(step)).toEqual(expect.arrayContaining(["row", "review-asked"]));
  });

  it("the operator's plan to review is answered by the decision, a plan to exchange stands", () => {
    const decided = reviewDecided({ on: "2026-09-01", decided: [["imaging", "2026-09-03"]] });
    const review = planRecorded({ on: "2026-08-15", act: "review", by: "2026-09-01" });
    expect(kindsAfter([nephrostomy, reached, review, decided])).not.toContain("review");
    const exchange = planRecorded({ on: "2026-08-15", act: "exchange", by: "2026-10-20" });
    expect(stepAfter([nephrostomy, reached, exchange, decided], "exchange").target).toBe("2026-10-20");
  });
});

describe("hard case 33: readings that a decision rested on", () => {
  const decidedOn = (...readings: readonly string[]) =>
    reviewDecided({
      on: "2026-08-26",
      decided: [["leave in", "2026-09-09"]],
      evidence: { asOf: at("2026-08-26T12:00Z"), readings: [...readings], said: [], protocol: 1 },
    });
  const one = reading({ id: "one", from: "since last emptying", to: at("2026-08-25T12:00Z") });
  const after = reading({ id: "after", from: "since last emptying", to: at("2026-08-27T12:00Z") });
  const reviewOf = (standing: readonly Reading[], ...seen: readonly string[]) =>
    stepAfter([drain, decidedOn(...seen)], "review", books({ readings: () => standing }));

  it("that stand as they were seen, and any that came after, leave the decision", () => {
    const step = reviewOf([one, after], "one");
    expect(step.dueOn).toBe("2026-09-09");
    expect(whyCodes(step)).not.toContain("evidence-changed");
  });

  it.each([
    ["one that stands no more", [], { gone: 1, other: 0 }],
    ["one in whose place another stands", [{ ...one, id: "two" }], { gone: 1, other: 1 }],
    ["one that speaks of before and came since", [one, { ...one, id: "late" }], { gone: 0, other: 1 }],
  ] as const)("%s: the physician looks at it again, now", (_name, standing, counts) => {
    const step = reviewOf(standing, "one");
    expect(step).toMatchObject({ dueOn: "2026-08-26", owner: { role: "nurse" } });
    expect(step.why.find(({ code }) => code === "evidence-changed")?.args).toMatchObject(counts);
  });
});
