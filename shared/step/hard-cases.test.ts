import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { catheterAge, tractAge } from "#shared/tube/clocks.ts";
import { decide } from "#shared/tube/decide.ts";
import { fold } from "#shared/tube/fold.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { tubeName, tubeTitle } from "#shared/tube/name.ts";
import {
  capped,
  clockDated,
  conditionsNoted,
  converted,
  died,
  type Entry,
  exchanged,
  F,
  factsNoted,
  fellOut,
  newPuncture,
  placed,
  planRecorded,
  removed,
  takenOver,
  uncapped,
  upsized,
  verified,
  voided,
} from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, stepsAfter, whyCodes } from "#tests/support/steps.ts";
import { books, command, history, now } from "#tests/support/told.ts";

/** Cases that a simple tracker gets wrong. Dates are arithmetic from the rows of the example table. */

const tubesAfter = (...entries: readonly Entry[]) => fold(history(...entries)).tubes;

describe("hard case 1: two nephrostomies out of step", () => {
  const entries = [
    placed({ side: "left", on: "2026-08-14" }),
    placed({ side: "right", on: "2026-09-04", tube: "tube-2", number: 2 }),
  ];
  const exchanges = (list = entries) => stepsAfter(list).filter(({ kind }) => kind === "exchange");

  it("have two clocks, and the earlier latest date comes first", () => {
    expect(exchanges().map((step) => [step.tubeId, ...dates(step)])).toEqual([
      ["tube-1", "2026-10-16", "2026-10-30", "2026-11-12"],
      ["tube-2", "2026-11-06", "2026-11-20", "2026-12-03"],
    ]);
  });

  it("an exchange of the one leaves the other's dates alone", () => {
    const [right, left] = exchanges([...entries, exchanged({ on: "2026-11-06" })]);
    expect(right).toEqual(exchanges()[1]);
    expect(left?.tubeId).toBe("tube-1");
    // 77 days from Fri 6 Nov 2026 are Fri 22 Jan 2027.
    expect(left?.target).toBe("2027-01-22");
  });
});

describe("hard case 2: exchanged in another hospital at night", () => {
  const entries = [
    placed({ on: "2026-06-05", size: F(8) }),
    exchanged({ on: "2026-08-14", at: "03:10", elsewhere: "Far Dale General", recordedOn: "2026-08-17" }),
  ];

  it("is reported: the due date is provisional, the size unknown until seen, no call after it is ours", () => {
    const step = stepAfter(entries, "exchange");
    expect(step.target).toBe("2026-10-30");
    expect(step.provisional).toBe(true);
    expect(tubesAfter(...entries)[0]?.size).toEqual(unknownFact);
    expect(kindsAfter(entries)).toEqual(["confirm what was done elsewhere", "call", "exchange"]);
    expect(whyCodes(stepAfter(entries, "call"))).toEqual(["exchange-call"]);
    expect(stepAfter(entries, "confirm what was done elsewhere").dueOn).toBe("2026-08-17");
  });

  it("is confirmed by a person: the date stays and is no longer provisional", () => {
    const step = stepAfter([...entries, verified({ on: "2026-08-20" })], "exchange");
    expect(step.target).toBe("2026-10-30");
    expect(step.provisional).toBe(false);
    // The date is sure now; the size still is not known, and is asked for.
    expect(kindsAfter([...entries, verified({ on: "2026-08-20" })])).toEqual([
      "find out",
      "call",
      "exchange",
    ]);
  });
});

describe("hard case 10: a ureteral stent has no output and no outside part", () => {
  it("has its date alone: the operator's", () => {
    const stent = [placed({ kind: "ureteral stent", plan: { act: "remove", by: "2026-10-12" } })];
    expect(kindOf("ureteral stent").outside).toBe(false);
    // Nobody carries one without knowing of it: that they were told is a step of its own.
    expect(kindsAfter(stent)).toEqual(["tell of the tube", "call", "remove"]);
    expect(dates(stepAfter(stent, "remove"))).toEqual([null, "2026-10-12", "2026-11-12"]);
  });

  it("else is due now", () => {
    const step = stepAfter([placed({ kind: "ureteral stent" })], "remove or exchange");
    expect(step.dueOn).toBe("2026-08-14");
    expect(whyCodes(step)).toContain("operator-date-missing");
  });

  it("taken over past its ceiling is due no later than the ceiling", () => {
    const old = [takenOver({ kind: "ureteral stent", on: "2026-03-02", recordedOn: "2026-08-14" })];
    // 90 days from Mon 2 Mar 2026 are Sun 31 May, shut: Fri 29 May 2026.
    expect(dates(stepAfter(old, "remove or exchange"))).toEqual([null, "2026-05-29", "2026-05-29"]);
  });

  it.each([
    // 180 days from Fri 14 Aug 2026 are Wed 10 Feb 2027.
    ["within both ceilings", "2026-11-12", []],
    ["past the first", "2026-11-13", ["plan-past-row-latest"]],
    ["on the second", "2027-02-10", ["plan-past-row-latest"]],
    ["past the second", "2027-02-11", ["plan-past-row-latest", "hard-latest"]],
  ])("a plan %s says so", (_name, by, codes) => {
    const step = stepAfter(
      [placed({ kind: "ureteral stent" }), planRecorded({ act: "remove", by })],
      "remove",
    );
    expect(step.target).toBe(by);
    expect(whyCodes(step).filter((code) => code.endsWith("-latest"))).toEqual(codes);
  });
});

describe("hard case 11: placement date unknown or partial", () => {
  it("unknown: due now until assessed, and nothing is counted from it", () => {
    const entries = [takenOver({ on: "?", recordedOn: "2026-08-14" })];
    const [step, ...others] = stepsAfter(entries);
    expect(others).toEqual([]);
    expect(step).toMatchObject({ kind: "assess the date", dueOn: "2026-08-14", provisional: true });
    expect(catheterAge(tubesAfter(...entries)[0]!, day("2026-08-14"))).toEqual({ known: false });
  });

  it("is due on the day of recording, even a Saturday: it needs no open clinic", () => {
    expect(stepsAfter([takenOver({ on: "?", recordedOn: "2026-08-15" })])[0]?.dueOn).toBe("2026-08-15");
  });

  it("some time in March: counted from 1 March, provisional, with the date to assess due now", () => {
    const entries = [takenOver({ on: "2026-03", recordedOn: "2026-04-02" })];
    const step = stepAfter(entries, "exchange");
    // 63 / 77 / 90 days from Sun 1 Mar 2026: Sun 3, Sun 17, Sat 30 May; open days inside: Mon 4, Fri 15, Fri 29 May.
    expect(dates(step)).toEqual(["2026-05-04", "2026-05-15", "2026-05-29"]);
    expect(step.provisional).toBe(true);
    expect(stepAfter(entries, "assess the date").dueOn).toBe("2026-04-02");
  });

  it("assessed: the date counts from then on, and the step is gone", () => {
    const entries = [
      takenOver({ on: "?", recordedOn: "2026-08-14" }),
      clockDated({ since: "2026-08-07", on: "2026-08-20" }),
    ];
    // 77 days from Fri 7 Aug 2026 are Fri 23 Oct 2026.
    expect(stepAfter(entries, "exchange")).toMatchObject({ target: "2026-10-23", provisional: false });
    expect(kindsAfter(entries)).toEqual(["call", "exchange"]);
  });

  it("an exchange of unknown date hides behind no older one: the clock is undated", () => {
    const entries = [placed({ on: "2026-01-05" }), exchanged({ on: "2026-04-01" }), exchanged({ on: "?" })];
    expect(kindsAfter(entries)).toEqual(["assess the date"]);
  });
});

describe("hard case 12: size unknown after a transfer", () => {
  it("is legal, shown as such, and the record works without it", () => {
    const entries = [takenOver({ size: unknownFact, on: "2026-08-14" })];
    const [tube] = tubesAfter(...entries);
    expect(tubeName(tube!)).toBe("Left nephrostomy, size unknown");
    expect(stepAfter(entries, "exchange").target).toBe("2026-10-30");
  });

  it("confirming the size leaves the bore, the label and the end hole unknown", () => {
    const [tube] = tubesAfter(
      takenOver({ size: unknownFact }),
      factsNoted({ facts: { size: confirmed(F(8)) } }),
    );
    expect(tube?.size).toEqual(confirmed(F(8)));
    expect(tube?.inside).toEqual({ takes: unknownFact, bores: [], endHole: unknownFact });
  });
});

describe("hard case 13: died", () => {
  const entries = [
    placed({ on: "2026-08-07" }),
    placed({ tube: "tube-2", number: 2, side: "right", on: "2026-08-07" }),
    fellOut({ tube: "tube-2", on: "2026-08-11" }),
  ];

  it("calls and every other step of every tube stop at once", () => {
    expect(stepsAfter(entries)).not.toEqual([]);
    expect(stepsAfter([...entries, died({ on: "2026-08-12" })])).toEqual([]);
  });

  it("undone, they are back as they were", () => {
    const undone = [...entries, died({ id: "death", on: "2026-08-12" }), voided("death")];
    expect(stepsAfter(undone)).toEqual(stepsAfter(entries));
  });

  it("some time in August, or nobody knows when, ends the tubes all the same", () => {
    for (const on of ["2026-08-01..2026-08-31", "?"]) {
      const state = fold(history(...entries, died({ on, recordedOn: "2026-09-02" })));
      expect(state.contradictions).toEqual([]);
      expect(state.tubes.map(({ status }) => status)).toEqual(["ended", "ended"]);
    }
  });
});

describe("hard case 19: fell out on day 6, and a new puncture on the same side", () => {
  const lost = [placed({ on: "2026-08-14" }), fellOut({ on: "2026-08-20" })];

  it("is not an exchange: that is refused, since the tract's age depends on it", () => {
    const decision = decide(history(...lost), command(exchanged({ on: "2026-08-20" })), now("2026-08-21"));
    expect(decision).toMatchObject({ ok: false, refusals: [{ code: "already-out" }] });
  });

  it("restarts both clocks: the tract is new", () => {
    const [tube] = tubesAfter(...lost, newPuncture({ on: "2026-08-21" }));
    expect(tractAge(tube!, day("2026-08-24"))).toEqual({ known: true, days: 3, exact: true });
    expect(catheterAge(tube!, day("2026-08-24"))).toEqual({ known: true, days: 3, exact: true });
    expect(tube?.status).toBe("in");
  });
});

describe("hard case 21: nephrostomy converted to nephroureteral, then to stent", () => {
  const entries = [
    placed({ on: "2026-06-05" }),
    converted({ on: "2026-08-14" }),
    converted({
      kind: "ureteral stent",
      closes: "tube-2",
      opens: "tube-3",
      number: 3,
      plan: { act: "remove", by: "2026-09-18" },
      on: "2026-09-04",
    }),
  ];

  it("closes and opens in one act, side carried along", () => {
    expect(tubesAfter(...entries).map((tube) => [tubeTitle(tube), tube.status])).toEqual([
      ["Left nephrostomy", "ended"],
      ["Left nephroureteral catheter", "ended"],
      ["Left ureteral stent", "in"],
    ]);
    expect(kindsAfter(entries)).toEqual(["tell of the tube", "call", "remove"]);
  });

  it("goes through the same tract: only the catheter's clock starts again", () => {
    const nephroureteral = tubesAfter(...entries.slice(0, 2))[1]!;
    expect(catheterAge(nephroureteral, day("2026-08-15"))).toMatchObject({ days: 1 });
    expect(tractAge(nephroureteral, day("2026-08-15"))).toMatchObject({ days: 71 });
  });

  it("undone, both tubes are as before: one is in, the other was never there", () => {
    const undone = [placed(), converted({ id: "mistake", on: "2026-08-20" }), voided("mistake")];
    expect(tubesAfter(...undone)).toEqual(tubesAfter(placed()));
  });
});

describe("hard case 22: stent and nephrostomy on one side", () => {
  const entries = [placed(), placed({ kind: "ureteral stent", tube: "tube-2", number: 2, on: "2026-08-17" })];

  it("are two tubes, each with steps of its own; the call is one for both", () => {
    const others = stepsAfter(entries).filter(({ kind }) => kind !== "call");
    expect([...new Set(others.map(({ tubeId }) => tubeId))].toSorted()).toEqual(["tube-1", "tube-2"]);
    expect(stepAfter(entries, "call").tubeId).toBeNull();
  });

  it('"urology took it out" does not say which: without a tube it is refused, with one the other stays', () => {
    const told = removed({ on: "2026-09-01", toldBy: "the patient" });
    const asked = { ...command(told), tubes: [] };
    expect(decide(history(...entries), asked, now("2026-09-02"))).toMatchObject({
      refusals: [{ code: "tube-unknown" }],
    });
    const [nephrostomy, stent] = tubesAfter(...entries, { ...told, tubes: ["tube-2"] });
    expect(nephrostomy?.status).toBe("in");
    expect(stent?.status).toBe("removal not confirmed");
  });

  it("told is not seen: until it is confirmed, a step asks and the stent's own date stands", () => {
    const told = removed({ tube: "tube-2", on: "2026-09-01", toldBy: "the patient" });
    const kinds = (list = [...entries, told]) =>
      stepsAfter(list)
        .filter(({ tubeId }) => tubeId === "tube-2")
        .map(({ kind }) => kind);
    expect(kinds()).toEqual(["remove or exchange", "confirm removal"]);
    expect(kinds([...entries, told, verified({ tube: "tube-2", on: "2026-09-03" })])).toEqual([]);
  });
});

describe("hard case 24: the latest date lies inside a two-week closure", () => {
  it("is pulled forward, and says so", () => {
    // Thu 12 Nov 2026 lies in a closure from Mon 2 to Sun 15 Nov: Fri 30 Oct 2026.
    const step = stepAfter([placed()], "exchange", books({ closed: ["2026-11-02..2026-11-15"] }));
    expect(dates(step)).toEqual(["2026-10-16", "2026-10-30", "2026-10-30"]);
    expect(step.physicianOn).toBe("2026-10-31");
    expect(step.why.at(-1)).toMatchObject({
      code: "moved",
      args: { end: "latest", from: "2026-11-12", to: "2026-10-30", because: "closure", reason: "closed" },
    });
  });
});

describe("hard case 29: pregnancy or stone former", () => {
  const noted = (conditions: { pregnancy?: true; stoneFormer?: true }) =>
    conditionsNoted({
      conditions: Object.fromEntries(Object.keys(conditions).map((name) => [name, confirmed(true)])),
    });

  it.each([
    // 42 days are Fri 25 Sep, 28 are Fri 11 Sep 2026.
    ["stone former", noted({ stoneFormer: true }), "2026-09-25"],
    ["pregnancy", noted({ pregnancy: true }), "2026-09-11"],
    ["pregnancy", noted({ pregnancy: true, stoneFormer: true }), "2026-09-11"],
  ])("the patient's own shorter interval wins, with its reason: %s", (factor, conditions, target) => {
    const step = stepAfter([placed(), conditions], "exchange");
    expect(step.target).toBe(target);
    expect(step.why).toContainEqual({ code: "factor", args: { factor }, eventId: null });
  });

  it("unknown asks for no shorter row", () => {
    const unknown = conditionsNoted({ conditions: { pregnancy: unknownFact } });
    expect(stepAfter([placed(), unknown], "exchange").target).toBe("2026-10-30");
  });
});

describe("hard case 36: the exchange date stands through capping and uncapping", () => {
  it("capped five days before it is due, and opened again", () => {
    const placedOnly = stepAfter([placed()], "exchange");
    const cappedOn = [placed(), capped({ on: "2026-10-25" })];
    expect(stepAfter(cappedOn, "exchange")).toEqual(placedOnly);
    expect(stepAfter([...cappedOn, uncapped({ on: "2026-10-27" })], "exchange")).toEqual(placedOnly);
  });

  it("an upsize sets a new one", () => {
    expect(stepAfter([placed(), upsized({ size: F(10), on: "2026-10-30" })], "exchange").target).toBe(
      "2027-01-15",
    );
  });
});
