import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import {
  type ExchangePlan,
  exchangeAnswer,
  type PlanRows,
  type PlanTube,
} from "#shared/fit/exchange-plan.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { sizeLine } from "#shared/words/passage.ts";
import { cm, coaxial, F, mm } from "#tests/factories/coaxial.ts";
import { exchangePlan, planRows, planTube } from "#tests/factories/planned-exchange.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { blank, bore, bores, inch, reported, takes } from "#tests/factories/tube-inside.ts";

type Said = {
  readonly plan?: Partial<ExchangePlan>;
  readonly tube?: Partial<PlanTube>;
  readonly rows?: Partial<PlanRows>;
  readonly shelf?: readonly ShelfType[];
};
const answer = ({ plan, tube, rows, shelf = [] }: Said = {}) =>
  exchangeAnswer(exchangePlan(plan), planTube(tube), { rows: { ...planRows, ...rows }, shelf });

const tubeOf = (size: number, inside: TubeInside = takes(0.038)) =>
  coaxial("tube", { name: "the tube to come", outside: F(size), inside, length: cm(25) });
const planning = (said: Partial<PlanningRows>): PlanRows["planning"] =>
  planRows.planning === null ? null : { ...planRows.planning, ...said };

describe("1. the wire through the tube in place", () => {
  it("by size, by label", () => {
    const { pair } = answer().throughOld;
    expect(pair.bySize).toMatchObject({ verdict: "passes", decides: { basis: "label" } });
    expect([pair.inner.sort, pair.outer.name]).toEqual(["wire", "the tube in place"]);
    expect(pair.outer).toMatchObject({
      sort: "tube",
      outside: confirmed(F(8)),
      length: confirmed(cm(25)),
      tolerance: null,
    });
  });

  it("case 35: labelled for the wire but crusted and past its latest date: by size it passes, by state it is in doubt", () => {
    const { pair, byState } = answer({ tube: { concerns: ["crusted"], pastLatest: true } }).throughOld;
    expect(pair.bySize.verdict).toBe("passes");
    expect(byState).toEqual({ state: "in doubt", concerns: ["crusted", "past latest date"] });
    expect(answer().throughOld.byState).toEqual({ state: "nothing recorded as present" });
  });

  it("case 12: size unknown after a transfer: cannot tell, and named what to find; French tells no inside", () => {
    const found = answer({ tube: { size: unknownFact, inside: blank, fullLength: unknownFact } });
    expect(found.throughOld.pair.bySize).toMatchObject({
      verdict: "cannot tell",
      missing: [{ what: "takes or bores" }],
    });
    expect(found.step).toEqual({ verdict: "cannot tell", missing: ["size in place"] });
    expect(found.length).toMatchObject({ missing: ["full length of the tube in place"] });
    expect(found.dilators).toBeNull();
    expect(found.doubts).toEqual(["cannot tell"]);
    const sized = answer({ tube: { size: confirmed(F(24)), inside: blank } });
    expect(sized.throughOld.pair.bySize.verdict).toBe("cannot tell");
  });
});

describe("2. the wire through the tube to come, or its stiffener", () => {
  it("the tube alone", () => {
    // 0.035 in under a label of 0.018.
    const { throughNew, doubts } = answer({ plan: { toCome: tubeOf(8, takes(0.018)) } });
    expect(throughNew.bySize?.verdict).toBe("does not pass");
    expect(throughNew.pairs.map(({ inner, outer }) => [inner.sort, outer.sort])).toEqual([["wire", "tube"]]);
    expect(doubts).toEqual(["does not pass"]);
  });

  it("with a stiffener the wire goes in that, and that in the tube", () => {
    const stiffener = coaxial("stiffener", { outside: F(5), inside: takes(0.038), length: cm(30) });
    // 5 F is at most 2.03; + 0.0254 + 0.05 = 2.1054, under 2.2 mm.
    const wide = tubeOf(8, {
      ...blank,
      bores: [{ place: "end hole", inside: confirmed(mm(2.2)), tolerance: null }],
    });
    const { throughNew } = answer({ plan: { stiffener, toCome: wide } });
    expect(throughNew.pairs.map(({ inner, outer }) => [inner.sort, outer.sort])).toEqual([
      ["wire", "stiffener"],
      ["stiffener", "tube"],
    ]);
    expect(throughNew.bySize?.verdict).toBe("passes");
  });
});

describe("3. the length of the wire", () => {
  // 25 - 5 inside, 10 to 20 beyond the tip, 40 to come, 10 to hold: 80 to 90 cm.
  it.each([
    [79.9, "too short", ["wire too short"]],
    [80, "doubt", ["doubt"]],
    [89.9, "doubt", ["doubt"]],
    [90, "long enough", []],
  ])("%d cm: %s", (length, verdict, doubts) => {
    const wire = coaxial("wire", { outside: inch(0.035), length: cm(length) });
    const found = answer({ plan: { wire } });
    expect(found.length).toMatchObject({ verdict, sum: { needed: { from: cm(80), to: cm(90) } } });
    expect(found.doubts).toEqual(doubts);
  });

  it("counts with the longest of the tube, its stiffener and a sheath", () => {
    const stiffener = coaxial("stiffener", { length: cm(45) });
    const sheath = coaxial("sheath", { length: cm(50) });
    // 20 + 20 + 45 + 10 = 95, with the sheath 100.
    expect(answer({ plan: { stiffener } }).length).toMatchObject({
      sum: { device: cm(45), needed: { to: cm(95) } },
    });
    expect(answer({ plan: { stiffener, sheath } }).length).toMatchObject({
      sum: { needed: { to: cm(100) } },
    });
  });

  it("a length, a step or a tract that cannot be told is a doubt of the plan", () => {
    for (const tube of [
      { fullLength: unknownFact },
      { size: unknownFact },
      { tractSince: null },
      { tractAges: null },
    ])
      expect(answer({ tube }).doubts).toEqual(["cannot tell"]);
    expect(answer({ tube: { externalLength: confirmed(cm(26)) } }).doubts).toEqual(["cannot tell"]);
  });

  it("has no answer without the row", () => {
    const none = { planning: planning({ wire: null }) };
    expect(answer({ rows: none }).length).toEqual({ verdict: "cannot tell", missing: ["row"] });
    expect(answer({ rows: { planning: null } }).length).toEqual({ verdict: "cannot tell", missing: ["row"] });
  });
});

describe("4. the step, and the dilators of the shelf", () => {
  const dilators = [12, 8, 14, 10, 16].map((size) =>
    shelfType({ name: `Dilator ${size} F`, sort: "dilator", outside: confirmed(F(size)) }),
  );
  const shelf = [...dilators, shelfType({ name: "Drain 9 F", sort: "tube", outside: confirmed(F(9)) })];
  const names = ({ dilators: found }: ReturnType<typeof answer>) =>
    found && [found.between.map(({ name }) => name), found.above?.name ?? null];

  it("8 F to 12 F: 4 F, over the usual 2 and not over the 4 of the row; 10 and 12, and 14 above", () => {
    const found = answer({ plan: { toCome: tubeOf(12) }, shelf });
    expect(found.step).toMatchObject({ verdict: "over the usual step", by: F(4) });
    expect(names(found)).toEqual([["Dilator 10 F", "Dilator 12 F"], "Dilator 14 F"]);
    expect(found.doubts).toEqual([]);
  });

  it("12.5 F is over the step for which the row asks a note", () => {
    const found = answer({ plan: { toCome: tubeOf(12.5) }, shelf });
    expect(found.step).toMatchObject({ verdict: "over the step with a note", by: F(4.5) });
    expect(found.doubts).toEqual(["step over the note"]);
  });

  it.each([8, 7])("8 F to %d F takes no dilator", (size) => {
    const found = answer({ plan: { toCome: tubeOf(size) }, shelf });
    expect(found.step.verdict).toBe("no upsize");
    expect(names(found)).toBeNull();
  });

  it("offers dilators where no row speaks of the step, and none to a size that nobody knows", () => {
    const found = answer({ plan: { toCome: tubeOf(10) }, rows: { planning: null }, shelf });
    expect(found.step).toEqual({ verdict: "cannot tell", missing: ["row"] });
    expect(names(found)).toEqual([["Dilator 10 F"], "Dilator 12 F"]);
    const unknown = { ...tubeOf(10), outside: unknownFact };
    expect(names(answer({ plan: { toCome: unknown }, shelf }))).toBeNull();
  });
});

describe("5. the age of the tract on the day of the plan", () => {
  it.each([
    ["2026-08-27", 13, "immature", ["immature tract"]],
    ["2026-08-28", 14, "neither", []],
    ["2026-09-10", 27, "neither", []],
    ["2026-09-11", 28, "mature", []],
  ])("punctured 14 Aug, planned for %s: %d days, %s", (on, age, maturity, doubts) => {
    const found = answer({ plan: { on: day(on) } });
    expect(found.tract).toMatchObject({ maturity, age, immatureUnder: 14 });
    expect(found.doubts).toEqual(doubts);
  });

  it("case 30: before it is mature access may be lost: both bleeding classes, and who agreed the plan?", () => {
    const { tract } = answer({ plan: { on: day("2026-08-24") } });
    expect(tract.bleeding.map((row) => row.class)).toEqual(["low", "high"]);
    expect(tract.asks).toBe("who agreed the plan?");
    expect(answer().tract).toMatchObject({ maturity: "mature", bleeding: [], asks: null });
    expect(answer({ plan: { on: day("2026-08-24") }, rows: { bleeding: null } }).tract).toMatchObject({
      bleeding: [],
      asks: null,
    });
  });

  it("with no day set it is the age of today; never less than nothing", () => {
    // 14 Aug to 23 Oct: 17 + 30 + 23 = 70.
    expect(answer({ plan: { on: null } }).tract.age).toBe(70);
    expect(answer({ plan: { on: day("2026-08-13") } }).tract.age).toBe(0);
  });

  it("an unknown puncture is never read as mature, nor is a kind without a row", () => {
    const unknown = answer({ tube: { tractSince: null } });
    expect(unknown.tract).toMatchObject({ maturity: "cannot tell", age: null, asks: "who agreed the plan?" });
    const noRow = answer({ tube: { tractAges: null } });
    expect(noRow.tract).toMatchObject({ maturity: "no row", age: 77, immatureUnder: null });
    expect(noRow.tract.bleeding).toHaveLength(2);
  });
});

describe("6. the sheath, by its inside", () => {
  const sheath = (width: number) =>
    coaxial("sheath", {
      inside: { ...blank, bores: [{ place: "end hole", inside: confirmed(mm(width)), tolerance: null }] },
      length: cm(20),
    });

  // 10 F is stated 3.4: 3.07 to 3.73 (ISO 20696:2018). 3.73 + 0.0254 + 0.05 = 3.8054; 3.07 + 0.0254 - 0.05 = 3.0454.
  it.each([
    [3.8054, "passes", []],
    [3.3, "doubt", ["doubt"]],
    [3.0453, "does not pass", ["does not pass"]],
  ])("10 F in one of %d mm: %s", (width, verdict, doubts) => {
    const found = answer({
      plan: { toCome: { ...tubeOf(10), length: confirmed(cm(25)) }, sheath: sheath(width) },
    });
    expect(found.throughSheath?.bySize?.verdict).toBe(verdict);
    expect(found.throughSheath?.byLength?.verdict).toBe("long enough");
    expect(found.doubts).toEqual(doubts);
  });

  it("is asked nothing of where none is planned", () => {
    expect(answer().throughSheath).toBeNull();
  });
});

describe("7. what holds the tube in place", () => {
  it("is let go by the clinic's list, with what must come out", () => {
    expect(answer().release).toMatchObject({ comesOut: "the loop, straight, and all of the string" });
    expect(answer({ tube: { retention: reported("balloon") } }).release).toMatchObject({
      comesOut: "the balloon, whole and empty",
    });
  });

  it("is cannot tell where nobody knows, and no row where the list has none", () => {
    expect(answer({ tube: { retention: unknownFact } }).release).toBe("retention unknown");
    expect(answer({ rows: { planning: planning({ release: [] }) } }).release).toBe("no row");
    expect(answer({ rows: { planning: null } }).release).toBe("no row");
  });

  it("names a kind that is not exchanged over a wire from the skin", () => {
    expect(answer({ tube: { kind: "ureteral stent" } }).notOverWire?.says).toContain("wholly inside");
    expect(answer().notOverWire).toBeNull();
    expect(answer({ rows: { planning: null } }).notOverWire).toBeNull();
  });
});

describe("done when: 8 F to 12 F in a 10-day-old tract, the wire passes the shaft and not the end hole", () => {
  // Wire 0.038 in = 0.9652 mm. Shaft 0.075 in: room. End hole 0.035 in: 0.038 + 0.001 clearance = 0.039 is over it, by 0.003 as recorded.
  const inside = bores(bore("shaft", 0.075), bore("end hole", 0.035));
  const wires = [0.038, 0.035, 0.018].map((size) =>
    shelfType({ name: `Wire ${size}`, outside: confirmed(inch(size)) }),
  );
  const upsizing = () =>
    answer({
      plan: {
        on: day("2026-08-24"),
        wire: coaxial("wire", { outside: inch(0.038), length: cm(145) }),
        toCome: tubeOf(12),
      },
      tube: { inside },
      shelf: [...wires, shelfType({ name: "Dilator 10 F", sort: "dilator", outside: confirmed(F(10)) })],
    });

  it("says where, by how much and in which unit; step, dilators, tract; which of ours do pass", () => {
    const found = upsizing();
    expect(sizeLine(found.throughOld.pair.bySize)).toBe(
      "Does not pass: at the end hole the wire is 0.003 in (0.076 mm) too thick.",
    );
    expect(found.throughNew.bySize?.verdict).toBe("passes");
    expect(found.step).toMatchObject({ by: F(4), verdict: "over the usual step" });
    expect(found.dilators?.between.map(({ name }) => name)).toEqual(["Dilator 10 F"]);
    expect(found.tract).toMatchObject({ maturity: "immature", age: 10, asks: "who agreed the plan?" });
    // 0.035 + 0.001 = 0.036 is over 0.035 too; 0.018 + 0.001 is not.
    expect(found.ready.wires.map(({ type, verdict }) => [type.name, verdict])).toEqual([
      ["Wire 0.018", "passes"],
      ["Wire 0.038", "does not pass"],
      ["Wire 0.035", "does not pass"],
    ]);
    expect(found.doubts).toEqual(["does not pass", "immature tract"]);
  });
});
