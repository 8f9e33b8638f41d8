import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { prerequisiteSays, settleByWords } from "#shared/words/prerequisites.ts";
import { christmas, prerequisiteRow, prerequisiteTable, things } from "#tests/factories/prerequisite.ts";
import { openWeeks } from "#tests/factories/visit.ts";
import { prerequisiteThings } from "./prerequisite-things.ts";
import {
  confirmBy,
  openOf,
  type PrerequisiteAnswer,
  prerequisitesOf,
  readyFrom,
  type VisitAhead,
} from "./prerequisites.ts";
import { type VisitAct, visitActs } from "./visit-acts.ts";

const visit = (on: string | null, ...tubes: readonly (readonly [TubeKind, VisitAct])[]): VisitAhead => ({
  tubes: (tubes.length === 0 ? [["nephrostomy", "exchange"] as const] : tubes).map(([kind, act]) => ({
    kind,
    act,
  })),
  on: on === null ? null : day(on),
});

describe("what has to be settled before a visit", () => {
  it("on a Monday, two working days before: the Thursday", () => {
    const [labs, ...more] = prerequisitesOf(
      visit("2026-11-16"),
      openWeeks,
      prerequisiteTable(prerequisiteRow({})),
    );
    expect(more).toEqual([]);
    expect(labs).toEqual({
      thing: "labs",
      workingDaysBefore: 2,
      settleBy: "2026-11-12",
      leadHours: null,
      rows: [{ row: "visits.prerequisites/1", says: "which", source: "CP" }],
    });
    expect(settleByWords(labs!)).toBe("settled by Thu 12 Nov 2026, 2 working days before");
  });

  it.each([
    [0, "2027-01-05"],
    [1, "2027-01-04"],
    [2, "2026-12-23"],
    [4, "2026-12-21"],
    [5, "2026-12-18"],
  ])(
    "over a closure and weekends: %i working days before Tue 5 Jan 2027 is %s",
    (workingDaysBefore, settleBy) => {
      const [labs] = prerequisitesOf(
        visit("2027-01-05"),
        christmas,
        prerequisiteTable(prerequisiteRow({ workingDaysBefore })),
      );
      expect(labs?.settleBy).toBe(settleBy);
    },
  );

  it("without a day of the visit, or an open day before it, there is no day to settle it by", () => {
    const [labs] = prerequisitesOf(
      visit(null),
      openWeeks,
      prerequisiteTable(prerequisiteRow({ workingDaysBefore: 0 })),
    );
    expect(labs).toMatchObject({ settleBy: null, workingDaysBefore: 0 });
    const shut = {
      ...openWeeks,
      closures: [{ from: day("2020-01-01"), to: day("2026-11-15"), reason: "long" }],
    };
    expect(
      prerequisitesOf(visit("2026-11-16"), shut, prerequisiteTable(prerequisiteRow({})))[0],
    ).toMatchObject({
      settleBy: null,
      workingDaysBefore: 2,
    });
  });

  it("is asked by kind and act; an empty list of kinds is every kind", () => {
    const prone = prerequisiteTable(
      prerequisiteRow({ thing: "lies prone", kinds: ["nephrostomy"], acts: ["exchange", "check"] }),
    );
    const asked = (kind: TubeKind, act: VisitAct) =>
      things(prerequisitesOf(visit("2026-11-16", [kind, act]), openWeeks, prone));
    expect(asked("nephrostomy", "exchange")).toEqual(["lies prone"]);
    expect(asked("nephrostomy", "check")).toEqual(["lies prone"]);
    expect(asked("nephrostomy", "removal")).toEqual([]);
    expect(asked("abscess drain", "exchange")).toEqual([]);
    const every = prerequisiteTable(prerequisiteRow({ kinds: [], acts: ["removal"] }));
    expect(things(prerequisitesOf(visit(null, ["other", "removal"]), openWeeks, every))).toEqual(["labs"]);
  });

  it("kind and act are of one tube: the exchange of one and the kind of another ask for nothing", () => {
    const cover = prerequisiteTable(prerequisiteRow({ kinds: ["nephrostomy"], acts: ["exchange"] }));
    const mixed = visit("2026-11-16", ["nephrostomy", "check"], ["abscess drain", "exchange"]);
    expect(prerequisitesOf(mixed, openWeeks, cover)).toEqual([]);
  });

  it("rows of several tubes are one thing: the earliest day, the longest lead, each row's words", () => {
    const rows = prerequisiteTable(
      prerequisiteRow({
        thing: "allergies",
        kinds: ["nephrostomy"],
        workingDaysBefore: 5,
        leadHours: 1,
        says: "latex",
      }),
      prerequisiteRow({ thing: "signed order", workingDaysBefore: 1 }),
      prerequisiteRow({
        thing: "allergies",
        kinds: ["abscess drain"],
        workingDaysBefore: 3,
        leadHours: 13,
        says: "contrast",
        source: "MEM",
      }),
      prerequisiteRow({
        thing: "allergies",
        kinds: ["cecostomy"],
        workingDaysBefore: 9,
        leadHours: 99,
        says: "not asked",
      }),
      prerequisiteRow({ thing: "allergies", workingDaysBefore: 0, leadHours: null, says: "all" }),
    );
    const both = visit("2026-11-16", ["nephrostomy", "exchange"], ["abscess drain", "exchange"]);
    const asked = prerequisitesOf(both, openWeeks, rows);
    expect(things(asked)).toEqual(["signed order", "allergies"]);
    expect(asked[1]).toEqual({
      thing: "allergies",
      workingDaysBefore: 5,
      settleBy: "2026-11-09",
      leadHours: 13,
      rows: [
        { row: "visits.prerequisites/1", says: "latex", source: "CP" },
        { row: "visits.prerequisites/3", says: "contrast", source: "MEM" },
        { row: "visits.prerequisites/5", says: "all", source: "CP" },
      ],
    });
    expect(prerequisiteSays(asked[1]!)).toBe("latex (source CP); contrast (source MEM); all (source CP)");
  });

  it("no row of the table is none, and neither is a visit of no tube", () => {
    expect(prerequisitesOf(visit("2026-11-16"), openWeeks, { visits: null })).toEqual([]);
    expect(prerequisitesOf({ tubes: [], on: day("2026-11-16") }, openWeeks, exampleProtocol)).toEqual([]);
  });
});

describe("the example rows of what is settled before a visit", () => {
  const asked = (kind: TubeKind, act: VisitAct) =>
    prerequisitesOf(visit("2026-11-16", [kind, act]), openWeeks, exampleProtocol);

  it("an exchange of a nephrostomy asks for every thing of the list", () => {
    expect(things(asked("nephrostomy", "exchange"))).toEqual(prerequisiteThings);
  });

  it("a removal of an abscess drain asks for less", () => {
    expect(things(asked("abscess drain", "removal"))).toEqual([
      "signed order",
      "blood thinners",
      "labs",
      "allergies",
      "interpreter",
      "transport",
      "dialysis or chemotherapy",
      "isolation",
    ]);
  });

  it.each(visitActs)("blood thinners are spoken of before every %s, and for no number of days", (act) => {
    const found = asked("other", act).find(({ thing }) => thing === "blood thinners");
    expect(found?.leadHours).toBeNull();
    expect(prerequisiteSays(found!)).toContain("who agreed the plan");
    expect(prerequisiteSays(found!)).not.toMatch(/\d+ (day|hour)/);
  });

  it("contrast premedication takes 13 hours (a common oral schedule of 13, 7 and 1 hours before; from memory, not verified)", () => {
    const leads = asked("nephrostomy", "exchange").filter(({ leadHours }) => leadHours !== null);
    expect(leads).toMatchObject([{ thing: "allergies", leadHours: 13 }]);
    expect(leads[0]?.rows[0]?.source).toContain("MEM");
  });

  it("a patient confirms two working days before; without a row or a day nobody says by when", () => {
    expect(confirmBy(day("2026-11-16"), openWeeks, exampleProtocol)).toBe("2026-11-12");
    expect(confirmBy(day("2027-01-05"), christmas, exampleProtocol)).toBe("2026-12-23");
    expect(confirmBy(null, openWeeks, exampleProtocol)).toBeNull();
    expect(confirmBy(day("2026-11-16"), openWeeks, prerequisiteTable())).toBeNull();
    expect(confirmBy(day("2026-11-16"), openWeeks, { visits: null })).toBeNull();
  });
});

const NOW = instant(Date.UTC(2026, 10, 12, 18, 0));
const asked = prerequisitesOf(
  visit("2026-11-16"),
  openWeeks,
  prerequisiteTable(
    prerequisiteRow({}),
    prerequisiteRow({ thing: "allergies", leadHours: 13 }),
    prerequisiteRow({ thing: "fasting", leadHours: 6 }),
    prerequisiteRow({ thing: "escort" }),
  ),
);

describe("what is open before a visit", () => {
  it("is all of it while nobody has answered", () => {
    expect(openOf(asked, [])).toEqual(asked);
  });

  it("is not what is settled or does not apply; what needs its time stays open", () => {
    const answers: PrerequisiteAnswer[] = [
      { thing: "labs", state: "settled" },
      { thing: "escort", state: "does not apply" },
      { thing: "allergies", state: "needs its lead time", begun: NOW },
      { thing: "fasting", state: "open" },
    ];
    expect(things(openOf(asked, answers))).toEqual(["allergies", "fasting"]);
  });

  it("goes by the last answer of a thing", () => {
    const settled: PrerequisiteAnswer = { thing: "labs", state: "settled" };
    const again: PrerequisiteAnswer = { thing: "labs", state: "open" };
    expect(things(openOf(asked, [settled, again]))).toContain("labs");
    expect(things(openOf(asked, [again, settled]))).not.toContain("labs");
  });

  it("an answer to what nobody asks for settles nothing else", () => {
    expect(openOf(asked, [{ thing: "isolation", state: "settled" }])).toEqual(asked);
  });
});

describe("when a visit can begin by lead times", () => {
  const needs = (thing: PrerequisiteAnswer["thing"], begun?: Instant | null): PrerequisiteAnswer => ({
    thing,
    state: "needs its lead time",
    begun,
  });
  const hour = (hours: number) => instant(NOW + hours * 3_600_000);

  it("waits for nothing that nobody needs", () => {
    const none = { from: null, cannotTell: [] };
    expect(readyFrom(asked, [], NOW)).toEqual(none);
    for (const state of ["open", "settled", "does not apply"] as const)
      expect(readyFrom(asked, [{ thing: "allergies", state, begun: NOW }], NOW)).toEqual(none);
  });

  it("13 hours from Thu 12 Nov 18:00 UTC on are over on Fri 13 Nov at 07:00", () => {
    const from = Date.UTC(2026, 10, 13, 7, 0);
    expect(readyFrom(asked, [needs("allergies")], NOW)).toEqual({ from, cannotTell: [] });
    expect(readyFrom(asked, [needs("allergies", null)], NOW)).toEqual({ from, cannotTell: [] });
  });

  it("counts from when it began, or is to begin", () => {
    expect(readyFrom(asked, [needs("allergies", hour(-10))], NOW).from).toBe(hour(3));
    expect(readyFrom(asked, [needs("allergies", hour(20))], NOW).from).toBe(hour(33));
  });

  it("the last to be ready decides", () => {
    expect(readyFrom(asked, [needs("allergies"), needs("fasting")], NOW).from).toBe(hour(13));
    expect(readyFrom(asked, [needs("allergies", hour(-12)), needs("fasting")], NOW).from).toBe(hour(6));
  });

  it("a later answer ends the wait", () => {
    expect(
      readyFrom(asked, [needs("allergies"), { thing: "allergies", state: "settled" }], NOW).from,
    ).toBeNull();
    expect(readyFrom(asked, [{ thing: "allergies", state: "settled" }, needs("allergies")], NOW).from).toBe(
      hour(13),
    );
  });

  it("says of which thing it cannot tell: no row has a lead time, or no row asks for it", () => {
    expect(readyFrom(asked, [needs("escort"), needs("isolation"), needs("fasting")], NOW)).toEqual({
      from: hour(6),
      cannotTell: ["escort", "isolation"],
    });
    expect(readyFrom(asked, [needs("escort")], NOW)).toEqual({ from: null, cannotTell: ["escort"] });
    expect(things(openOf(asked, [needs("escort")]))).toContain("escort");
  });
});
