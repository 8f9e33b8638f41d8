import { describe, expect, it } from "vitest";
import {
  amended,
  called,
  capped,
  checked,
  clockDated,
  conditionsNoted,
  converted,
  died,
  type Entry,
  exchanged,
  F,
  fellOut,
  notReplaced,
  placed,
  planRecorded,
  removed,
  takenOver,
  uncapped,
  upsized,
  verified,
  voided,
} from "#tests/support/factories.ts";
import { command, history, now } from "#tests/support/told.ts";
import { unknownFact } from "./certainty.ts";
import { type Command, decide } from "./decide.ts";
import type { TubeEvent } from "./event.ts";

/** Noon on Mon 31 Aug 2026; a left nephrostomy stands since 14 Aug. */
const today = now("2026-08-31");
const open = placed({ id: "p" });

const refusals = (entries: readonly Entry[], asked: Command, at = today) => {
  const decision = decide(history(...entries), asked, at);
  return decision.ok ? [] : decision.refusals;
};
const codes = (entries: readonly Entry[], asked: Entry | Command, at = today) =>
  refusals(entries, "lastSeen" in asked ? asked : command(asked), at).map(({ code }) => code);

describe("a command that nothing speaks against", () => {
  it("adds one event at the end of the stream, recorded today, and gives the state with it", () => {
    const events = history(open);
    const decision = decide(events, command(exchanged({ id: "x", on: "2026-08-20" })), today);
    if (!decision.ok) throw new Error("refused");
    const [event] = decision.events;
    expect(decision.events).toHaveLength(1);
    expect(event).toMatchObject({ id: "x", seq: 2, kind: "exchanged", recordedOn: "2026-08-31" });
    expect(event?.pins).toEqual({ protocol: 1, calendar: 1 });
    expect(decision.state.tubes[0]?.catheter.eventId).toBe("x");
  });

  it("pins only what starts a clock", () => {
    const decision = decide(history(open), command(capped({ on: "2026-08-20" })), today);
    expect(decision).toMatchObject({ ok: true, events: [{ pins: null }] });
  });

  it("follows the last place in the stream, gaps or not", () => {
    const events: TubeEvent[] = history(open).map((event) => ({ ...event, seq: 41 }));
    expect(decide(events, command(capped()), today)).toMatchObject({ ok: true, events: [{ seq: 42 }] });
  });
});

describe("day and time", () => {
  it.each([
    ["yesterday at 23:59", { on: "2026-08-30", at: "23:59" }, []],
    ["today, no time", { on: "2026-08-31" }, []],
    ["today at this minute", { on: "2026-08-31", at: "12:00" }, []],
    ["today in a minute", { on: "2026-08-31", at: "12:01" }, ["time-in-future"]],
    ["tomorrow", { on: "2026-09-01" }, ["day-in-future"]],
    ["a span that began", { on: "2026-08-01..2026-09-30" }, []],
    ["a span that begins tomorrow", { on: "2026-09-01..2026-09-30" }, ["day-in-future"]],
    ["unknown", { on: "?" }, []],
  ])("%s", (_name, said, expected) => {
    expect(codes([open], exchanged(said))).toEqual(expected);
  });

  it.each([
    ["when the tract was made", takenOver({ tube: "new", tractSince: "2026-09-01" }), "tractSince"],
    ["the clock's start", clockDated({ since: "2026-09-01" }), "catheterSince"],
    ["the tract's start", clockDated({ since: "2026-08-31", tractSince: "2026-09-01" }), "tractSince"],
    ["what an amendment puts in place", amended("p", placed({ on: "2026-09-01" })), "when"],
  ])("inside the entry: %s lies ahead", (_name, entry, field) => {
    expect(refusals([open], command(entry))).toEqual([
      { code: "day-in-future", field, args: { day: "2026-09-01" } },
    ]);
  });

  it("a time still to come, put in place by an amendment", () => {
    expect(codes([open], amended("p", placed({ on: "2026-08-31", at: "12:01" })))).toEqual([
      "time-in-future",
    ]);
    expect(codes([open], amended("p", placed({ on: "2026-08-31", at: "12:00" })))).toEqual([]);
  });

  it("does not stand in the way of a plan or of voiding", () => {
    expect(codes([open], planRecorded({ act: "exchange", by: "2026-10-01" }))).toEqual([]);
    expect(codes([open, checked({ id: "c" })], voided("c", { on: "2027-01-01" }))).toEqual([]);
  });
});

describe("which tube, which entry", () => {
  it.each([
    ["a tube of nobody", { ...command(capped()), tubes: ["other"] }],
    ["an upsize of a tube of nobody", command(upsized({ tube: "other", size: F(10) }))],
    ["no tube where one is needed", { ...command(capped()), tubes: [] }],
    ["two tubes where one is needed", { ...command(capped()), tubes: ["tube-1", "tube-1"] }],
    ["a tube where none is named", { ...command(died()), tubes: ["tube-1"] }],
    ["a conversion of a tube of nobody", command(converted({ closes: "other" }))],
    [
      "a conversion that closes another tube than it names",
      {
        ...command(converted({ closes: "tube-1" })),
        tubes: ["tube-1", "tube-9"],
      },
    ],
  ])("%s", (_name, asked) => {
    expect(codes([open], asked)).toEqual(["tube-unknown"]);
  });

  it.each([
    ["voiding an entry of nobody", command(voided("nothing"))],
    ["amending an entry of nobody", command(amended("nothing", checked()))],
    ["voiding no entry", { ...command(voided("p")), amends: null }],
    ["an exchange that speaks of another entry", { ...command(exchanged()), amends: "p" }],
  ])("%s", (_name, asked) => {
    expect(codes([open], asked)).toEqual(["entry-unknown"]);
  });
});

describe("a content that cannot be read", () => {
  it.each([
    ["a field is missing", { ...command(capped()), payload: { covers: null } }, "bagAtHome"],
    ["a field too many", { ...command(capped()), payload: { ...capped().payload, more: 1 } }, ""],
    ["an amendment without a reason", command(amended("p", open, { reason: " " })), "reason"],
    ["an amendment of a placement by a check", command(amended("p", checked())), "kind"],
  ])("%s", (_name, asked, field) => {
    expect(refusals([open], asked)).toEqual([{ code: "entry-not-understood", args: { field } }]);
  });

  it("an amendment of an amendment is read as the first entry's kind", () => {
    const once = [open, amended("p", placed({ on: "2026-08-13" }), { id: "a" })];
    const again = (by: Entry) => codes(once, amended("a", amended("p", by)));
    expect(again(placed({ on: "2026-08-12" }))).toEqual([]);
    expect(again(checked())).toEqual(["entry-not-understood"]);
  });
});

describe("an upsize", () => {
  it.each([
    ["smaller", F(7.9), ["upsize-not-larger"]],
    ["the same", F(8), ["upsize-not-larger"]],
    ["larger by a tenth", F(8.1), []],
    ["unknown", unknownFact, []],
  ])("%s", (_name, size, expected) => {
    expect(codes([open], upsized({ size }))).toEqual(expected);
  });

  it("of a tube of unknown size, or that says no size, cannot be told and goes through", () => {
    expect(codes([placed({ size: unknownFact })], upsized({ size: F(6) }))).toEqual([]);
    expect(codes([open], upsized())).toEqual([]);
  });

  it("quotes both sizes", () => {
    expect(refusals([open], command(upsized({ size: F(8) })))[0]?.args).toEqual({ old: "8 F", size: "8 F" });
  });
});

describe("something changed since the form was opened", () => {
  const right = placed({ id: "r", tube: "tube-2", number: 2, side: "right" });
  const stream = [open, right];
  /** A form that had seen the first two entries. */
  const asked = (entry: Entry) => command(entry, 2);

  it.each([
    ["an exchange, against an exchange of the same tube", exchanged(), exchanged(), true],
    ["an exchange, against an exchange of the other tube", exchanged({ tube: "tube-2" }), exchanged(), false],
    ["an exchange, against a fall", fellOut(), exchanged({ order: 1 }), true],
    ["an exchange, against a cap", capped(), exchanged(), false],
    ["an exchange, against a plan", planRecorded({ act: "remove", by: "2026-09-30" }), exchanged(), true],
    ["a cap, against facts and mode", capped(), uncapped({ order: 1 }), true],
    ["a check, against an exchange", exchanged(), checked(), false],
    ["a call, against a call", called(), called(), false],
    ["conditions, against conditions", conditionsNoted(), conditionsNoted(), true],
    ["conditions, against an exchange", exchanged(), conditionsNoted(), false],
    ["a death, against a removal", removed(), died({ order: 1 }), true],
    ["amending the placement, against an exchange", exchanged(), amended("p", placed()), true],
    [
      "amending the placement, against an exchange of the other",
      exchanged({ tube: "tube-2" }),
      amended("p", placed()),
      false,
    ],
    ["an exchange, against an amended placement", amended("p", placed()), exchanged(), true],
    [
      "an exchange, against an amended placement of the other",
      amended("r", placed({ tube: "tube-2" })),
      exchanged(),
      false,
    ],
    ["voiding, against an amendment of the same entry", amended("p", placed()), voided("p"), true],
  ])("%s: %#", (_name, since, entry, conflicts) => {
    const expected = conflicts ? ["changed-meanwhile"] : [];
    expect(codes([...stream, since], asked(entry))).toEqual(expected);
  });

  it("names what was recorded, and no longer once the form has seen it", () => {
    const later = [...stream, exchanged({ on: "2026-08-20" }), fellOut({ on: "2026-08-21" })];
    const found = refusals(later, asked(removed({ on: "2026-08-22" })));
    expect(found).toEqual([
      { code: "changed-meanwhile", field: undefined, args: { entries: "exchanged, fell out" } },
    ]);
    expect(refusals(later, command(removed({ on: "2026-08-22" }), 4))).toEqual([]);
  });

  it("an amendment of a check by two people: the second sees the first", () => {
    const check = [...stream.slice(0, 1), checked({ id: "c" })];
    expect(codes([...check, amended("c", checked())], asked(amended("c", checked())))).toEqual([
      "changed-meanwhile",
    ]);
  });
});

describe("a clinic without protocol or calendar", () => {
  it("can start no clock, but record what starts none", () => {
    expect(codes([], placed(), now("2026-08-31", null))).toEqual(["no-pins"]);
    expect(codes([open], capped(), now("2026-08-31", null))).toEqual([]);
  });
});

describe("what would contradict the history is refused", () => {
  const out = fellOut({ on: "2026-08-20" });
  it.each([
    ["event-before-opening", [open], exchanged({ on: "2026-08-13" })],
    ["event-after-end", [open, removed({ on: "2026-08-20" })], exchanged({ on: "2026-08-21" })],
    ["tube-opened-twice", [open], placed()],
    ["already-capped", [open, capped()], capped({ on: "2026-08-20" })],
    ["not-capped", [open], uncapped({ on: "2026-08-20" })],
    ["already-out", [open, out], exchanged({ on: "2026-08-21" })],
    ["not-out", [open], notReplaced({ on: "2026-08-21" })],
    [
      "event-before-opening",
      [open, capped({ on: "2026-08-20" })],
      amended("p", placed({ on: "2026-08-21" })),
    ],
    ["rests-on-entry", [open, capped({ on: "2026-08-20" })], voided("p")],
  ])("%s (%#)", (code, entries, asked) => {
    expect(codes(entries, asked)).toEqual([code]);
  });

  it("but not what was contradictory already", () => {
    const odd = [open, uncapped({ on: "2026-08-20" })];
    expect(codes(odd, checked({ on: "2026-08-21" }))).toEqual([]);
  });

  it("and several things to mend come at once", () => {
    const asked = { ...command(upsized({ size: F(6), on: "2026-09-01" })), lastSeen: 1 };
    expect(codes([open, exchanged({ on: "2026-08-20" })], asked)).toEqual([
      "day-in-future",
      "upsize-not-larger",
      "changed-meanwhile",
    ]);
  });
});

describe("what is told first and known later", () => {
  it("a removal that was told is confirmed", () => {
    const told = [open, removed({ toldBy: "the ward", on: "2026-08-20" })];
    const decision = decide(history(...told), command(verified({ on: "2026-08-21" })), today);
    expect(decision).toMatchObject({ ok: true, state: { tubes: [{ status: "ended" }] } });
  });
});
