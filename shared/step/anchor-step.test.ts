import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { movedSteps } from "#shared/step/repinned.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import {
  anchorsRemoved,
  conditionsNoted,
  converted,
  died,
  type Entry,
  exchanged,
  factsNoted,
  fellOut,
  hospiceDecided,
  newPuncture,
  placed,
  removed,
  takenOver,
} from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, whyCodes } from "#tests/support/steps.ts";
import { books, history } from "#tests/support/told.ts";

/** From Fri 14 Aug 2026, Monday to Friday; days by the rows of the example table (common practice, no source). */
const of = (kind: "balloon gastrostomy" | "tunnelled pleural catheter" | "bumper gastrostomy", said = {}) =>
  placed({ kind, side: kind === "tunnelled pleural catheter" ? "left" : "not sided", ...said });
const g = of("balloon gastrostomy");
const drain = of("tunnelled pleural catheter");
const fixedBy = (fixation: string) => factsNoted({ facts: { fixation: confirmed(fixation) } });
const step = (...entries: readonly Entry[]) => stepAfter(entries, "anchors out");
const isOpen = (...entries: readonly Entry[]) => kindsAfter(entries).includes("anchors out");

describe("anchors or a suture due out", () => {
  it("is the nurse's, in the window of the row, on clinic days", () => {
    // 14 + 10 = Mon 24 Aug, 14 + 14 = Fri 28 Aug.
    expect(dates(step(g))).toEqual(["2026-08-24", "2026-08-24", "2026-08-28"]);
    expect(step(g).owner.role).toBe("nurse");
    // 14 + 14 = Fri 28 Aug, 14 + 21 = Fri 4 Sep.
    expect(dates(step(drain))).toEqual(["2026-08-28", "2026-08-28", "2026-09-04"]);
    // Thu 13 + 10 = Sun 23 Aug: Monday; 13 + 14 = Thu 27 Aug.
    const thursday = step(of("balloon gastrostomy", { on: "2026-08-13" }));
    expect(dates(thursday)).toEqual(["2026-08-24", "2026-08-24", "2026-08-27"]);
    expect(whyCodes(thursday)).toContain("moved");
  });

  it("says the row, that nobody said how it is held, from where it counts, and EXAMPLE", () => {
    expect(step(g).why.slice(0, 2)).toEqual([
      { code: "anchors-row", args: { holds: "anchors", from: 10, to: 14, source: "CP" }, eventId: null },
      { code: "held-at-skin", args: { fixation: null }, eventId: null },
    ]);
    expect(whyCodes(step(g))).toEqual(["anchors-row", "held-at-skin", "counted-from", "row-example"]);
    const approved = books();
    const signed = {
      ...approved,
      protocol: () => ({ ...exampleProtocol, approved: { by: "Dr Example", on: day("2026-08-03") } }),
    };
    expect(whyCodes(stepAfter([g], "anchors out", signed))).not.toContain("row-example");
  });

  it("is not asked of a kind without a row, nor by a table that has none", () => {
    expect(isOpen(of("bumper gastrostomy"))).toBe(false);
    const none = { ...books(), protocol: () => ({ ...exampleProtocol, anchors: [] }) };
    expect(kindsAfter([g], none)).not.toContain("anchors out");
  });

  it("goes by what is said of the fixation: said to be none, no step; one named, or nothing said of them, the step with the words", () => {
    expect(isOpen(g, fixedBy("no anchors"))).toBe(false);
    expect(isOpen(g, fixedBy("none"))).toBe(false);
    expect(
      step(g, fixedBy("disc"))
        .why.slice(0, 2)
        .map(({ args }) => args),
    ).toEqual([{ holds: "anchors", from: 10, to: 14, source: "CP" }, { fixation: "disc" }]);
    // Of a suture "no anchors" says nothing.
    expect(isOpen(drain, fixedBy("no anchors"))).toBe(true);
    expect(isOpen(drain, fixedBy("without sutures"))).toBe(false);
    expect(isOpen(g, anchorsRemoved({ on: "2026-08-25" }), fixedBy("disc"))).toBe(false);
    expect(step(g, fixedBy("3 anchors")).why[1]?.args).toEqual({ fixation: "3 anchors" });
    expect(
      isOpen(g, fixedBy("none"), factsNoted({ on: "2026-08-20", facts: { fixation: unknownFact } })),
    ).toBe(true);
  });

  it("is answered by an entry that they came out, also where there were none", () => {
    expect(isOpen(g, anchorsRemoved({ on: "2026-08-25" }))).toBe(false);
    expect(isOpen(g, anchorsRemoved({ on: "2026-08-25", what: "none" }))).toBe(false);
    expect(isOpen(drain, anchorsRemoved({ on: "2026-08-31", what: "the skin suture" }))).toBe(false);
  });

  it("stands while the same entry says that one is left", () => {
    const left = anchorsRemoved({ on: "2026-08-25", fixation: confirmed("1 anchor, disc") });
    expect(dates(step(g, left))).toEqual(dates(step(g)));
  });
});

describe("what anchors count from", () => {
  const exchange = exchanged({ on: "2026-08-21" });

  it("is the puncture: an exchange puts none in again, and leaves those that nobody took out", () => {
    expect(dates(step(g, exchange))).toEqual(dates(step(g)));
    expect(isOpen(g, anchorsRemoved({ on: "2026-08-25" }), exchanged({ on: "2026-08-31" }))).toBe(false);
  });

  it("and none there were stay none: what held it before an exchange is believed, a suture asks anew", () => {
    expect(isOpen(g, fixedBy("no anchors"), exchange)).toBe(false);
    expect(isOpen(g, fixedBy("disc"), exchange)).toBe(true);
    expect(isOpen(g, fixedBy("3 anchors"), exchange)).toBe(true);
    expect(isOpen(drain, fixedBy("dressing"), exchange)).toBe(true);
  });

  it("goes on through a conversion in the same tract", () => {
    const turned = converted({ kind: "gastrojejunostomy", on: "2026-08-31" });
    expect(dates(step(g, turned))).toEqual(dates(step(g)));
    expect(isOpen(g, anchorsRemoved({ on: "2026-08-25" }), turned)).toBe(false);
  });

  it("begins anew with a new puncture", () => {
    const again = [g, anchorsRemoved({ on: "2026-08-25" }), newPuncture({ on: "2026-08-28" })];
    // 28 Aug + 10 = Mon 7 Sep, + 14 = Fri 11 Sep.
    expect(dates(step(...again))).toEqual(["2026-09-07", "2026-09-07", "2026-09-11"]);
  });

  it("a suture counts from the catheter in place, which may have another", () => {
    // 21 Aug + 14 = Fri 4 Sep, + 21 = Fri 11 Sep.
    const out = anchorsRemoved({ on: "2026-08-20" });
    expect(dates(step(drain, out, exchange))).toEqual(["2026-09-04", "2026-09-04", "2026-09-11"]);
    // A gastrostomy that a suture holds: 21 + 10 = Mon 31 Aug, 21 + 14 = Fri 4 Sep.
    const sewn = exchanged({ on: "2026-08-21", facts: { fixation: confirmed("suture") } });
    expect(dates(step(g, sewn))).toEqual(["2026-08-31", "2026-08-31", "2026-09-04"]);
  });

  it("unknown, it is asked on the day of recording, and said", () => {
    const over = takenOver({ kind: "balloon gastrostomy", side: "not sided", recordedOn: "2026-08-14" });
    const asked = step(over);
    expect(dates(asked)).toEqual([null, "2026-08-14", null]);
    expect(whyCodes(asked)).toContain("start-unknown");
    expect(asked.provisional).toBe(true);
  });

  it("known and recorded after the window, it is late by no date that nobody set", () => {
    const over = (recordedOn: string) =>
      takenOver({
        kind: "balloon gastrostomy",
        side: "not sided",
        on: "2026-06-01",
        tractSince: "2026-06-01",
        recordedOn,
      });
    // 1 Jun + 14 = Mon 15 Jun.
    expect(dates(step(over("2026-06-15")))).toEqual(["2026-06-11", "2026-06-11", "2026-06-15"]);
    expect(dates(step(over("2026-06-16")))).toEqual([null, "2026-06-16", null]);
  });

  it("a span, it counts from its earliest day, provisionally", () => {
    const asked = step(
      takenOver({
        kind: "balloon gastrostomy",
        side: "not sided",
        on: "2026-08-14",
        tractSince: "2026-08-10..2026-08-14",
        recordedOn: "2026-08-14",
      }),
    );
    // 10 + 10 = Thu 20 Aug, 10 + 14 = Mon 24 Aug.
    expect(dates(asked)).toEqual(["2026-08-20", "2026-08-20", "2026-08-24"]);
    expect(asked.provisional).toBe(true);
  });
});

describe("whose tube it is", () => {
  it("under 18 no example row applies, and it is asked now; of unknown age it is provisional", () => {
    const child = books({ bornOn: day("2012-12-12") });
    const asked = stepAfter([g], "anchors out", child);
    expect(dates(asked)).toEqual([null, "2026-08-14", null]);
    expect(whyCodes(asked)).toContain("no-example-for-child");
    const unsure = stepAfter([g], "anchors out", books({ bornOn: null }));
    expect(whyCodes(unsure)).toContain("age-unknown");
    expect([unsure.provisional, dates(unsure)]).toEqual([true, dates(step(g))]);
  });

  it("goes with the tube, the record and the patient", () => {
    expect(isOpen(g, fellOut({ on: "2026-08-20" }))).toBe(false);
    expect(isOpen(g, removed({ on: "2026-08-20" }))).toBe(false);
    expect(isOpen(g, removed({ on: "2026-08-20", toldBy: "the ward" }))).toBe(false);
    expect(isOpen(g, died({ on: "2026-08-20" }))).toBe(false);
  });

  it("in hospice stands until a decision stops it, as the check of the water does", () => {
    const hospice = conditionsNoted({ on: "2026-08-20", conditions: { hospice: confirmed(true) } });
    expect(isOpen(g, hospice)).toBe(true);
    const decided = hospiceDecided({ on: "2026-08-20", exchanges: "stop", until: "2026-12-31" });
    const kinds = kindsAfter([g, decided]);
    expect(kinds).not.toContain("anchors out");
    expect(kinds).not.toContain("balloon check");
    expect(isOpen(g, hospiceDecided({ on: "2026-08-20", exchanges: "go on", until: "2026-12-31" }))).toBe(
      true,
    );
  });
});

describe("another row", () => {
  it("is proposed with its days, and its days with a table that had none", () => {
    const of = (anchors: Protocol["anchors"]) =>
      books({ protocol: (version) => ({ ...exampleProtocol, version, ...(version === 1 && { anchors }) }) });
    const moved = (anchors: Protocol["anchors"]) =>
      movedSteps(fold(history(g)), of(anchors), { protocol: 2, calendar: 1 })
        .filter(({ kind }) => kind === "anchors out")
        .map(({ stood, proposed }) => [stood?.target, proposed?.target]);
    expect(moved([])).toEqual([[undefined, "2026-08-24"]]);
    // 14 + 12 = Wed 26 Aug.
    const later = exampleProtocol.anchors.map((row) => ({ ...row, from: 12 }));
    expect(moved(later)).toEqual([["2026-08-26", "2026-08-24"]]);
    expect(moved(exampleProtocol.anchors)).toEqual([]);
  });
});
