import { describe, expect, it } from "vitest";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import {
  acceptedElsewhere,
  bled,
  broken,
  called,
  clockDated,
  conditionsNoted,
  died,
  type Entry,
  exchanged,
  exchangePlanned,
  F,
  factsNoted,
  fellOut,
  followUpEnded,
  handedOver,
  hospiceDecided,
  inch,
  placed,
  planRecorded,
  reconcileAsked,
  removalDecided,
  removed,
  takenOver,
  transferred,
  verified,
  voided,
  whereaboutsNoted,
} from "#tests/support/factories.ts";
import { kindsAfter, stepAfter, stepsAfter, whyCodes } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";

/** Fri 14 Aug 2026, Monday to Friday. Dates are arithmetic from the rows of the example table. */
const open = placed();
const reached = called({ on: "2026-08-17" });

describe("a removal that was decided", () => {
  const owner = { role: "physician", staffId: "staff-physician" } as const;
  const decided = removalDecided({ on: "2026-08-20", by: "2026-09-02", owner, reason: "no longer needed" });

  it("is a step with who and by when; the exchange date stands", () => {
    const step = stepAfter([open, reached, decided], "remove");
    expect(step).toMatchObject({
      owner,
      dueOn: "2026-09-02",
      latest: "2026-09-02",
      physicianOn: "2026-09-03",
    });
    expect(whyCodes(step)).toEqual(["removal-decided", "removal-reason"]);
    expect(stepAfter([open, reached, decided], "exchange")).toEqual(stepAfter([open, reached], "exchange"));
  });

  it("on a closed day is the open day before, and says so", () => {
    const step = stepAfter([open, removalDecided({ by: "2026-09-05" })], "remove");
    expect(step.target).toBe("2026-09-04");
    expect(whyCodes(step)).toContain("moved");
  });

  it("beside a plan to remove that came with an exchange is one step, due on the earlier day", () => {
    const planned = exchanged({ on: "2026-08-24", plan: { act: "remove", by: "2026-10-01" } });
    const step = stepAfter([open, decided, planned], "remove");
    expect(step.dueOn).toBe("2026-09-02");
    expect(whyCodes(step)).toContain("plan");
  });
});

describe("a tract that is too young", () => {
  const chole = (route: string | null) => placed({ kind: "cholecystostomy", side: "not sided", route });
  const removeBy = (by: string) => removalDecided({ by });
  const young = (entries: readonly Entry[], kind: "remove" | "exchange" = "remove") =>
    stepAfter(entries, kind).why.filter(({ code }) => code.startsWith("tract-"));

  it.each([
    // 21 days from Fri 14 Aug 2026 are Fri 4 Sep, 42 are Fri 25 Sep.
    ["transhepatic", "2026-09-03", "2026-09-04"],
    ["transhepatic", "2026-09-04", null],
    ["transperitoneal", "2026-09-24", "2026-09-25"],
    ["transperitoneal", "2026-09-25", null],
    [null, "2026-09-24", "2026-09-25"],
  ])("%s, out by %s: says so, and does not forbid it", (route, by, from) => {
    const step = stepAfter([chole(route), removeBy(by)], "remove");
    expect(step.dueOn).toBe(by);
    expect(young([chole(route), removeBy(by)]).map(({ args }) => args.from)).toEqual(
      from === null ? [] : [from],
    );
  });

  it("is said of the operator's plan to remove too", () => {
    const planned = [chole(null), planRecorded({ act: "remove", by: "2026-09-01" })];
    expect(young(planned)).toMatchObject([{ code: "tract-too-young", args: { days: 42 } }]);
  });

  it("of unknown age cannot be told", () => {
    const over = takenOver({ kind: "cholecystostomy", side: "not sided", on: "?", recordedOn: "2026-08-14" });
    expect(young([over, removeBy("2026-09-01")])).toMatchObject([{ code: "tract-age-unknown" }]);
    const dated = clockDated({ since: "2026-07-01", tractSince: "2026-07-01" });
    expect(young([over, dated, removeBy("2026-09-01")])).toEqual([]);
  });

  it("has no row in a kind without one", () => {
    expect(young([open, removeBy("2026-08-17")])).toEqual([]);
  });

  it.each([
    // 14 days from Fri 14 Aug 2026 are Fri 28 Aug.
    ["2026-08-27", ["tract-too-young"]],
    ["2026-08-28", []],
  ])("a suprapubic catheter is not exchanged under 14 days: planned for %s", (by, codes) => {
    const planned = placed({ kind: "suprapubic catheter", plan: { act: "exchange", by } });
    expect(young([planned], "exchange").map(({ code }) => code)).toEqual(codes);
  });

  it("counts from the exchange on for later catheters of a suprapubic tract: no such row", () => {
    const later = exchanged({ on: "2026-09-25", plan: { act: "exchange", by: "2026-09-30" } });
    expect(young([placed({ kind: "suprapubic catheter" }), later], "exchange")).toEqual([]);
  });

  it.each([
    ["on the day of the puncture", "2026-08-07", "suprapubic catheter, first exchange"],
    ["nobody knows how long after", "?", "suprapubic catheter, then"],
    ["long after", "2026-01-05", "suprapubic catheter, then"],
  ])("taken over, placed %s: row %s", (_name, tractSince, row) => {
    const over = takenOver({ kind: "suprapubic catheter", on: "2026-08-07", tractSince });
    expect(stepAfter([over], "exchange").why.find(({ code }) => code === "row")?.args.row).toBe(row);
  });
});

describe("a handover", () => {
  const given = handedOver({ on: "2026-08-20", person: "Dr. Orla Invented" });

  it("that nobody has accepted is an open step, and every date is still ours", () => {
    expect(stepAfter([open, given], "handover")).toMatchObject({ dueOn: "2026-08-20" });
    expect(stepAfter([open, given], "exchange")).toEqual(stepAfter([open], "exchange"));
  });

  it("of a tube that is out stays open beside its loss; of a fragment too", () => {
    expect(kindsAfter([open, given, fellOut({ on: "2026-08-21" })])).toEqual(["tube out", "handover"]);
    const piece = broken({ on: "2026-08-21", fragmentInside: confirmed(true) });
    expect(kindsAfter([open, given, piece])).toEqual(["alarm", "fragment retained", "handover"]);
  });

  it("accepted by a named person is the end", () => {
    expect(stepsAfter([open, given, acceptedElsewhere({ on: "2026-08-24" })])).toEqual([]);
  });
});

describe("a transfer with what must be found out", () => {
  const over = takenOver({ size: unknownFact, on: "2026-08-14" });
  const asked = transferred({
    on: "2026-08-17",
    findOut: ["size", "what holds it"],
    askWhom: "Far Dale General",
  });
  const noted = (facts: Parameters<typeof factsNoted>[0]) => [
    over,
    asked,
    factsNoted({ on: "2026-08-18", ...facts }),
  ];

  it("is open until the record knows each of them; told is known", () => {
    expect(stepAfter([over, asked], "find out")).toMatchObject({
      dueOn: "2026-08-17",
      why: [{ args: { what: "size, what holds it", askWhom: "Far Dale General" } }],
    });
    const size = noted({ facts: { size: confirmed(F(8)) } });
    expect(stepAfter(size, "find out").why[0]?.args.what).toBe("what holds it");
    const both = noted({
      facts: { size: confirmed(F(8)), retention: { certainty: "reported", value: "locking loop" } },
    });
    expect(kindsAfter(both)).not.toContain("find out");
  });

  it("with nothing to find out asks nothing", () => {
    const whole = takenOver({ size: confirmed(F(8)), on: "2026-08-14" });
    expect(kindsAfter([whole, transferred()])).not.toContain("find out");
  });
});

describe("what nobody knows of a tube and somebody must", () => {
  const gap = (tube: Parameters<typeof takenOver>[0]) => [takenOver({ on: "2026-08-14", ...tube })];
  const asked = (entries: readonly Entry[]) =>
    stepAfter(entries, "find out").why.map(({ args }) => args.what);

  it("is asked for on the day of recording, side before size, by the nurse", () => {
    const both = gap({ size: unknownFact, side: unknownFact });
    expect(stepAfter(both, "find out")).toMatchObject({
      dueOn: "2026-08-14",
      owner: { role: "nurse" },
      why: [{ code: "gap", args: { what: "side, size" } }],
    });
  });

  it("is a side only where the kind has one", () => {
    expect(
      kindsAfter(gap({ kind: "balloon gastrostomy", side: unknownFact, size: confirmed(F(18)) })),
    ).not.toContain("find out");
  });

  it.each([
    ["told", { certainty: "reported", value: F(8) } as const],
    ["about", { certainty: "estimated", value: F(8) } as const],
    ["seen", confirmed(F(8))],
  ])("a size that is %s is no gap", (_name, size) => {
    expect(
      kindsAfter([...gap({ size: unknownFact }), factsNoted({ on: "2026-08-18", facts: { size } })]),
    ).not.toContain("find out");
  });

  it("closes by noting the side, and opens again when that is voided", () => {
    const open = gap({ side: unknownFact, size: confirmed(F(8)) });
    const noted = factsNoted({ on: "2026-08-18", side: confirmed("left") });
    expect(asked(open)).toEqual(["side"]);
    expect(kindsAfter([...open, noted])).not.toContain("find out");
    expect(asked([...open, noted, voided("e2")])).toEqual(["side"]);
  });

  it("is asked again after an exchange elsewhere was confirmed without the size", () => {
    const elsewhere = [
      placed({ on: "2026-06-05", size: F(8) }),
      exchanged({ on: "2026-08-14", elsewhere: "Far Dale General" }),
    ];
    expect(kindsAfter(elsewhere)).not.toContain("find out");
    expect(asked([...elsewhere, verified({ on: "2026-08-20" })])).toEqual(["size"]);
  });

  it.each([
    // Row: 14 days. 30 Oct less 14 days is 16 Oct 2026.
    ["the insides, from so many days before a planned exchange", {}, "2026-10-30", ["2026-10-16"]],
    ["nothing where what it takes is told", { takes: confirmed(inch(0.035)) }, "2026-10-30", []],
    [
      "the insides where one is measured and the end hole is not",
      { bores: [{ place: "hub" as const, inside: confirmed(inch(0.079)), tolerance: null }] },
      "2026-10-30",
      ["2026-10-16"],
    ],
    [
      "nothing where the end hole is measured",
      { bores: [{ place: "end hole" as const, inside: confirmed(inch(0.038)), tolerance: null }] },
      "2026-10-30",
      [],
    ],
    ["nothing of an exchange without a day", {}, undefined, []],
  ])("is %s", (_name, facts, planned, due) => {
    const entries = [placed({ facts }), exchangePlanned({ on: "2026-08-20", ...(planned && { planned }) })];
    expect(
      stepsAfter(entries)
        .filter(({ kind }) => kind === "find out")
        .map(({ dueOn }) => dueOn),
    ).toEqual(due);
  });

  it("of the patient is the birth date, asked once for all tubes", () => {
    const two = [open, placed({ tube: "tube-2", side: "right", number: 2 })];
    expect(stepAfter(two, "find out", books({ bornOn: null }))).toMatchObject({
      tubeId: null,
      dueOn: "2026-08-14",
      why: [{ code: "birth-date-unknown" }],
    });
    const ended = two.map((_, index) => removed({ tube: `tube-${index + 1}` }));
    const after = [...two, ...ended, called({ on: "2026-08-18" })];
    expect(kindsAfter(after, books({ bornOn: null }))).toEqual([]);
  });
});

describe("a follow-up that a named clinician ends", () => {
  const ends = followUpEnded({ on: "2026-08-22" });

  it.each([
    ["a piece left inside", removed({ on: "2026-08-20", whole: confirmed(false) })],
    ["a removal that was only told", removed({ on: "2026-08-20", toldBy: "urology" })],
    ["a tube that is in", reached],
  ])("%s asks nothing more, and asks again when that is undone", (_name, before) => {
    expect(kindsAfter([open, before])).not.toEqual([]);
    expect(kindsAfter([open, before, ends])).toEqual([]);
    expect(stepsAfter([open, before, ends, voided("e3")])).toEqual(stepsAfter([open, before]));
  });
});

describe("hospice", () => {
  // Target of the exchange: Fri 30 Oct 2026.
  const base = [open, reached];
  const hospice = conditionsNoted({ on: "2026-08-20", conditions: { hospice: confirmed(true) } });

  it("noted, asks a physician to decide; until then everything goes on", () => {
    expect(stepAfter([...base, hospice], "hospice")).toMatchObject({
      dueOn: "2026-08-20",
      owner: { role: "physician" },
      why: [{ code: "hospice-undecided" }],
    });
    expect(stepAfter([...base, hospice], "exchange")).toEqual(stepAfter(base, "exchange"));
  });

  it.each([
    ["stopped until after it would be due", "stop", "2026-12-31", ["hospice"]],
    ["stopped until the day it is due", "stop", "2026-10-30", ["hospice"]],
    ["stopped until the day before: the exchange stands", "stop", "2026-10-29", ["hospice", "exchange"]],
    ["going on", "go on", "2026-12-31", ["exchange", "hospice"]],
  ] as const)("exchanges %s", (_name, exchanges, until, kinds) => {
    const entries = [...base, hospiceDecided({ on: "2026-08-20", exchanges, until })];
    expect(kindsAfter(entries)).toEqual(kinds);
    expect(stepAfter(entries, "hospice").dueOn).toBe(until);
  });

  it("calls stop or go on apart from exchanges", () => {
    expect(kindsAfter([open, hospiceDecided({ calls: "go on" })])).toEqual(["call", "hospice"]);
    expect(kindsAfter([open, hospiceDecided({ exchanges: "go on" })])).toEqual(["exchange", "hospice"]);
  });

  it("stops no alarm, no loss, no removal that was decided", () => {
    const entries = [...base, hospiceDecided(), bled({ on: "2026-08-21" }), removalDecided()];
    expect(kindsAfter(entries)).toEqual(["alarm", "remove", "hospice"]);
    expect(kindsAfter([...base, hospiceDecided(), fellOut({ on: "2026-08-21" })])).toEqual([
      "tube out",
      "hospice",
    ]);
  });

  it("left, everything is as before", () => {
    const out = conditionsNoted({ on: "2026-09-01", conditions: { hospice: confirmed(false) } });
    expect(stepsAfter([...base, hospiceDecided(), out])).toEqual(stepsAfter(base));
  });
});

describe("what is asked of the patient", () => {
  it("ends with a death, and whereabouts with the last tube", () => {
    const asked = [open, whereaboutsNoted(), reconcileAsked()];
    expect(kindsAfter([...asked, died({ on: "2026-08-20" })])).toEqual([]);
    expect(kindsAfter([...asked, acceptedElsewhere({ on: "2026-08-20" })])).toEqual(["reconcile"]);
  });

  it("each has an id of its own", () => {
    const twice = [open, reconcileAsked(), reconcileAsked({ about: "which tube" }), whereaboutsNoted()];
    const ids = stepsAfter(twice).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
