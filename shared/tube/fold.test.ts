import { describe, expect, it } from "vitest";
import { nothingTried } from "#shared/call/call-log.ts";
import { nothingNoted } from "#shared/tube/apply-patient.ts";
import {
  called,
  capped,
  checked,
  conditionsNoted,
  converted,
  died,
  type Entry,
  exchanged,
  exchangePlanned,
  F,
  factsNoted,
  fellOut,
  inch,
  newPuncture,
  notReplaced,
  partlyDislodged,
  placed,
  planRecorded,
  removed,
  salvaged,
  stepAssigned,
  takenOver,
  tipPosition,
  uncapped,
  verified,
  when,
} from "#tests/support/factories.ts";
import { kindsAfter, stepAfter } from "#tests/support/steps.ts";
import { history } from "#tests/support/told.ts";
import { confirmed, unknownFact } from "./certainty.ts";
import { fold } from "./fold.ts";

const state = (...entries: readonly Entry[]) => fold(history(...entries));
const tube = (...entries: readonly Entry[]) => state(...entries).tubes[0]!;
const codes = (...entries: readonly Entry[]) => state(...entries).contradictions.map(({ code }) => code);

/** Placed on Fri 14 Aug 2026; later days as they come. */
const open = placed();
const out = fellOut({ on: "2026-08-20" });

describe("what cannot be true is a contradiction, and a loose end", () => {
  it.each([
    ["event-before-opening", [capped()]],
    ["event-before-opening", [open, capped({ on: "2026-08-13" })]],
    ["event-after-end", [open, removed({ on: "2026-08-20" }), capped({ on: "2026-08-21" })]],
    ["event-after-end", [open, died({ on: "2026-08-20" }), exchanged({ on: "2026-08-21" })]],
    ["event-after-end", [open, died({ on: "2026-08-20" }), died({ on: "2026-08-21" })]],
    ["event-after-end", [open, died({ on: "2026-08-20" }), placed({ tube: "tube-2", on: "2026-08-21" })]],
    ["event-after-end", [open, removed({ on: "2026-08-20" }), converted({ on: "2026-08-21" })]],
    ["tube-opened-twice", [open, placed({ on: "2026-08-20" })]],
    ["tube-opened-twice", [open, converted({ closes: "tube-1", opens: "tube-1" })]],
    ["tube-not-opened", [converted()]],
    ["already-capped", [open, capped({ on: "2026-08-20" }), capped({ on: "2026-08-21" })]],
    ["not-capped", [open, uncapped({ on: "2026-08-20" })]],
    ["already-out", [open, out, fellOut({ on: "2026-08-21" })]],
    ["already-out", [open, out, partlyDislodged({ on: "2026-08-21" })]],
    ["already-out", [open, out, exchanged({ on: "2026-08-21" })]],
    ["not-out", [open, notReplaced({ on: "2026-08-21" })]],
    ["no-pins", [placed({ pins: null })]],
    ["no-pins", [open, exchanged({ on: "2026-08-21", pins: null })]],
    ["fragment-inside", [open, removed({ whole: confirmed(false) }), newPuncture({ on: "2026-08-21" })]],
    ["fragment-inside", [open, removed({ whole: confirmed(false) }), fellOut({ on: "2026-08-21" })]],
    ["fragment-inside", [open, removed({ whole: confirmed(false) }), converted({ on: "2026-08-21" })]],
  ])("%s (%#)", (code, entries) => {
    expect(codes(...entries)).toEqual([code]);
    expect(kindsAfter(entries)).toContain("contradiction");
  });

  it.each([
    ["on the day of placement", [open, capped()]],
    ["on the day of removal", [open, capped({ on: "2026-08-20" }), removed({ on: "2026-08-20" })]],
    ["at 10:00 on a day of death without a time", [open, checked({ at: "10:00" }), died()]],
    ["a call after the end", [open, died({ on: "2026-08-20" }), called({ on: "2026-08-21" })]],
    ["a fact found after the end", [open, removed({ on: "2026-08-20" }), factsNoted({ on: "2026-08-21" })]],
    ["capped, uncapped, capped", [open, capped(), uncapped({ order: 1 }), capped({ order: 2 })]],
    ["fell out and was salvaged", [open, out, salvaged({ on: "2026-08-20", order: 1 })]],
    ["converted to a tube of its own", [open, converted({ on: "2026-08-20" })]],
  ])("%s is none", (_name, entries) => {
    expect(codes(...entries)).toEqual([]);
  });

  it("leaves the record open and the other tubes alone", () => {
    const both = [open, placed({ tube: "tube-2", number: 2 })];
    const odd = state(...both, converted({ closes: "tube-1", opens: "tube-2", on: "2026-08-20" }));
    expect(odd.tubes).toEqual(state(...both).tubes);
  });
});

describe("the end of a record", () => {
  it.each([
    ["removed whole, seen here", [removed()], "ended"],
    ["removed, told by telephone", [removed({ toldBy: "the ward" })], "removal not confirmed"],
    ["removed, nobody knows whether whole", [removed({ whole: unknownFact })], "removal not confirmed"],
    [
      "removed whole, as reported",
      [removed({ whole: { certainty: "reported", value: true } })],
      "removal not confirmed",
    ],
    ["told, then confirmed", [removed({ toldBy: "the ward" }), verified({ order: 1 })], "ended"],
    ["removed, not whole", [removed({ whole: confirmed(false) })], "fragment retained"],
    ["the fragment removed too", [removed({ whole: confirmed(false) }), removed({ order: 1 })], "ended"],
    ["out", [fellOut()], "out, undecided"],
    ["out and not replaced by decision", [fellOut(), notReplaced({ order: 1 })], "ended"],
    [
      "out in parts and not replaced",
      [fellOut({ whole: confirmed(false) }), notReplaced({ order: 1 })],
      "fragment retained",
    ],
    ["partly out", [partlyDislodged()], "in"],
    ["converted", [converted()], "ended"],
    ["died", [died()], "ended"],
    ["not reached, three times", [1, 2, 3].map((n) => called({ outcome: "not reached", order: n })), "in"],
  ])("%s", (_name, entries, status) => {
    expect(tube(open, ...entries).status).toBe(status);
  });

  it("told in error: the tube falls out later, and is out, not removed", () => {
    const later = tube(open, removed({ toldBy: "the ward" }), fellOut({ on: "2026-08-30" }));
    expect(later).toMatchObject({ status: "out, undecided", ending: null, unverified: null });
  });

  it("told in error: the tube is exchanged later, and nothing of the end is left", () => {
    const later = tube(open, removed({ toldBy: "the ward" }), exchanged({ on: "2026-08-30" }));
    expect(later).toMatchObject({ status: "in", ending: null, unverified: null });
  });

  it("told without a date comes after the last exchange", () => {
    const told = removed({ on: "?", toldBy: "the patient", recordedOn: "2026-08-25" });
    expect(tube(placed({ on: "2026-05-01" }), exchanged(), told).status).toBe("removal not confirmed");
  });

  it("of a fragment is asked of a physician from the day of the removal", () => {
    const step = stepAfter(
      [open, removed({ on: "2026-08-20", whole: confirmed(false) })],
      "fragment retained",
    );
    expect(step).toMatchObject({ dueOn: "2026-08-20", owner: { role: "physician" } });
  });
});

describe("a renewal", () => {
  const measured = {
    takes: confirmed(inch(0.035)),
    bores: [{ place: "shaft" as const, inside: confirmed(inch(0.05)), tolerance: null }],
    endHole: confirmed("open" as const),
    externalLength: confirmed(F(300)),
    retention: confirmed("locking loop" as const),
    fixation: confirmed("two anchors"),
  };
  const known = placed({ facts: measured });

  it("keeps size and retention, and makes what was measured on the old tube unknown", () => {
    const after = tube(known, tipPosition(), exchanged({ on: "2026-08-20" }));
    expect(after.size).toEqual(confirmed(F(8)));
    expect(after.retention).toEqual(measured.retention);
    expect(after.inside).toEqual({ takes: unknownFact, bores: [], endHole: unknownFact });
    expect(after).toMatchObject({ externalLength: unknownFact, fixation: unknownFact, tipConfirmed: null });
  });

  it("done elsewhere keeps not even the size", () => {
    const after = tube(known, exchanged({ elsewhere: "Far Dale General" }));
    expect(after).toMatchObject({ size: unknownFact, retention: unknownFact, startedHere: false });
  });

  it("takes the facts that it states", () => {
    expect(tube(known, exchanged({ size: F(10) })).size).toEqual(confirmed(F(10)));
  });

  it("clears plans, owners, calls and concerns of the old tube, and the tube that was part out", () => {
    const busy = [
      known,
      checked({ concerns: ["crusted"] }),
      planRecorded({ act: "remove", by: "2026-09-01" }),
      exchangePlanned(),
      stepAssigned(),
      called(),
      partlyDislodged(),
    ];
    expect(kindsAfter(busy)[0]).toBe("part out");
    expect(tube(...busy, exchanged({ on: "2026-08-20" }))).toMatchObject({
      plan: null,
      plannedExchange: null,
      owners: {},
      called: null,
      checked: null,
      concerns: [],
      dislodged: null,
    });
  });

  it("that was difficult is a concern of the next", () => {
    expect(tube(open, exchanged({ difficult: true })).concerns).toEqual(["last exchange difficult"]);
  });
});

describe("what is noted", () => {
  it("leaves what was not spoken of, and an unknown replaces what was known", () => {
    const noted = tube(open, factsNoted({ facts: { size: unknownFact, takes: confirmed(inch(0.038)) } }));
    expect(noted.size).toEqual(unknownFact);
    expect(noted.inside.takes).toEqual(confirmed(inch(0.038)));
    expect(noted.side).toEqual(confirmed("left"));
  });

  it("of the patient adds to what was known", () => {
    const noted = state(
      conditionsNoted({ conditions: { pregnancy: confirmed(true), diabetes: confirmed(false) } }),
      conditionsNoted({ conditions: { diabetes: confirmed(true) }, on: "2026-08-20" }),
    );
    expect(noted.conditions).toEqual({ pregnancy: confirmed(true), diabetes: confirmed(true) });
  });

  it("gives a step an owner until the tube is renewed", () => {
    const assigned = [open, stepAssigned({ owner: { role: "physician", staffId: "p1" } })];
    expect(stepAfter(assigned, "exchange").owner).toEqual({ role: "physician", staffId: "p1" });
    expect(stepAfter([...assigned, exchanged({ on: "2026-08-20" })], "exchange").owner.role).toBe("nurse");
  });

  it("at a call: attempts are counted, reaching anyone closes the step", () => {
    const missed = called({ outcome: "not reached" });
    const attempts = stepAfter([open, missed, missed], "call").why.find(
      ({ code }) => code === "call-attempts",
    );
    expect(attempts?.args).toEqual({ attempts: 2 });
    expect(tube(open, missed, called({ outcome: "reached a carer" })).called?.reached).toBe(true);
    expect(tube(open, called(), missed).called?.reached).toBe(true);
  });

  it("at a check: the review counts from it, and a planned review is done", () => {
    const drain = placed({
      kind: "abscess drain",
      side: "not sided",
      plan: { act: "review", by: "2026-08-21" },
    });
    expect(stepAfter([drain], "review").target).toBe("2026-08-21");
    // 14 days from Wed 26 Aug are Wed 9 Sep 2026; from Mon 2 Nov past the latest date, Thu 12 Nov 2026.
    expect(stepAfter([drain, checked({ on: "2026-08-26" })], "review").target).toBe("2026-09-09");
    expect(stepAfter([drain, checked({ on: "2026-11-02" })], "review").target).toBe("2026-11-12");
    // A check that nobody can date moves nothing: 14 days from the placement are Fri 28 Aug 2026.
    expect(stepAfter([drain, checked({ on: "?" })], "review").target).toBe("2026-08-28");
  });

  it("of the tip has its own date", () => {
    const { tipConfirmed, catheter } = tube(
      open,
      tipPosition({ on: "2026-08-20", inPlace: confirmed(false) }),
    );
    expect(tipConfirmed).toEqual({ when: when("2026-08-20"), inPlace: confirmed(false) });
    expect(catheter.since).toEqual(when("2026-08-14"));
  });
});

describe("a tube taken over", () => {
  it("has the tract's own start, where it came from, and no first call of ours", () => {
    const over = takenOver({ from: "Far Dale General", tractSince: "2026-01-05" });
    expect(tube(over)).toMatchObject({
      takenOverFrom: "Far Dale General",
      tract: { since: when("2026-01-05") },
    });
    expect(kindsAfter([over])).toEqual(["call", "exchange"]);
    expect(stepAfter([over], "call").why.map(({ code }) => code)).toEqual(["exchange-call"]);
  });

  it("is called so even where nobody knows from where", () => {
    expect(tube(takenOver()).takenOverFrom).toBe("elsewhere");
  });
});

describe("the story", () => {
  it("of a tube holds every entry that names it, in order, those after its end too", () => {
    const entries = [
      open,
      capped({ on: "2026-08-18" }),
      died({ on: "2026-08-20" }),
      called({ on: "2026-08-21" }),
    ];
    expect(tube(...entries).story.map(({ kind }) => kind)).toEqual(["placed", "capped", "died", "called"]);
  });
});

describe("a patient's tubes", () => {
  it("come by their number", () => {
    const numbers = state(placed({ tube: "b", number: 2 }), placed({ tube: "a", number: 1 })).tubes;
    expect(numbers.map(({ id }) => id)).toEqual(["a", "b"]);
    const same = state(placed({ tube: "b" }), placed({ tube: "a" })).tubes;
    expect(same.map(({ id }) => id)).toEqual(["a", "b"]);
  });

  it("are none before anything was recorded", () => {
    const none = {
      ...nothingNoted,
      calls: nothingTried,
      visits: [],
      redFlags: [],
      flagsDone: [],
      died: null,
    };
    expect(state()).toEqual({ ...none, tubes: [], contradictions: [], lastSeq: 0 });
  });
});

describe("the operator's plan", () => {
  it.each([
    ["an exchange takes the row's place", { act: "exchange", by: "2026-09-18" }, ["call", "exchange"]],
    ["a removal takes the row's place", { act: "remove", by: "2026-09-18" }, ["remove"]],
    [
      "a review stands beside the exchange",
      { act: "review", by: "2026-09-18" },
      ["review", "call", "exchange"],
    ],
  ] as const)("%s", (_name, plan, kinds) => {
    const planned = [open, called(), planRecorded(plan)];
    expect(kindsAfter(planned)).toEqual(kinds);
    expect(stepAfter(planned, plan.act).target).toBe("2026-09-18");
  });

  it("keeps the row's latest date, and says so where it passes it", () => {
    const by = (on: string) =>
      stepAfter([open, planRecorded({ act: "exchange", by: on, reason: "travel" })], "exchange");
    expect(by("2026-11-12").latest).toBe("2026-11-12");
    expect(by("2026-11-13").latest).toBe("2026-11-13");
    expect(by("2026-11-13").why.map(({ code }) => code)).toContain("plan-past-row-latest");
    expect(by("2026-11-12").why.map(({ code }) => code)).not.toContain("plan-past-row-latest");
    expect(by("2026-11-13").why).toContainEqual(
      expect.objectContaining({ code: "plan-reason", args: { reason: "travel" } }),
    );
  });
});
