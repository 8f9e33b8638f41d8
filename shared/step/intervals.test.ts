import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { conditionsNoted, datesConfirmed, placed } from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, whyCodes } from "#tests/support/steps.ts";
import { books, calendar } from "#tests/support/told.ts";

const pregnant = conditionsNoted({ conditions: { pregnancy: confirmed(true) } });
const nephrostomy = placed();

describe("the word EXAMPLE", () => {
  it("goes once somebody approved the table", () => {
    const approved = { ...exampleProtocol, approved: { by: "Dr. Orla Invented", on: day("2026-08-01") } };
    const step = stepAfter([nephrostomy], "exchange", books({ protocol: () => approved }));
    expect(whyCodes(step)).not.toContain("row-example");
  });
});

describe("a plan's day on a closed day is pulled forward, never put off", () => {
  // Row 63/77/90 from Fri 14 Aug 2026: Fri 16 Oct, Fri 30 Oct, Thu 12 Nov 2026.
  it.each([
    ["before the row's earliest", "2026-10-04", [], [null, "2026-10-02", "2026-11-12"]],
    ["just after it", "2026-10-18", [], ["2026-10-16", "2026-10-16", "2026-11-12"]],
    [
      "with no open day left after it",
      "2026-10-18",
      ["2026-10-16..2026-10-16"],
      [null, "2026-10-15", "2026-11-12"],
    ],
    ["past the row's latest", "2026-11-15", [], ["2026-10-16", "2026-11-13", "2026-11-13"]],
  ])("%s: a Sunday, %s", (_name, by, closed, expected) => {
    const planned = [placed({ plan: { act: "exchange", by } })];
    expect(dates(stepAfter(planned, "exchange", books({ closed })))).toEqual(expected);
  });
});

describe("closed days", () => {
  // From Sat 15 Aug 2026: Sat 17 Oct, Sat 31 Oct, Fri 13 Nov 2026.
  const saturday = [placed({ on: "2026-08-15" })];

  it("move an earliest later, target and latest earlier", () => {
    const step = stepAfter(saturday, "exchange", books({ closed: ["2026-11-09..2026-11-20"] }));
    expect(dates(step)).toEqual(["2026-10-19", "2026-10-30", "2026-11-06"]);
    expect(step.why.filter(({ code }) => code === "moved").map(({ args }) => args)).toEqual([
      { end: "earliest", from: "2026-10-17", to: "2026-10-19", because: "closed-weekday", reason: null },
      { end: "target", from: "2026-10-31", to: "2026-10-30", because: "closed-weekday", reason: null },
      { end: "latest", from: "2026-11-13", to: "2026-11-06", because: "closure", reason: "closed" },
    ]);
  });

  it.each([
    // The window of pregnancy is Fri 4 Sep to Fri 25 Sep 2026.
    ["one day is left at its start", "2026-09-05..2026-09-30", ["2026-09-04", "2026-09-04", "2026-09-04"]],
    ["one day is left at its end", "2026-08-20..2026-09-24", ["2026-09-25", "2026-09-25", "2026-09-25"]],
  ])("%s", (_name, closed, three) => {
    const of = books({ closed: [closed] });
    expect(dates(stepAfter([nephrostomy, pregnant], "exchange", of))).toEqual(three);
    expect(kindsAfter([nephrostomy, pregnant], of)).not.toContain("no day left");
  });

  it("leave no day: the asked dates stand, and a loose end says so", () => {
    const of = books({ closed: ["2026-09-04..2026-09-25"] });
    const entries = [nephrostomy, pregnant];
    expect(dates(stepAfter(entries, "exchange", of))).toEqual(["2026-09-04", "2026-09-11", "2026-09-25"]);
    const looseEnd = stepAfter(entries, "no day left", of);
    expect(looseEnd.dueOn).toBe("2026-09-25");
    expect(looseEnd.why[0]).toEqual({ code: "no-day-left", args: { step: "exchange" }, eventId: null });
  });

  it("leave no day for the first call either: a long weekend asks who covers", () => {
    // Placed Fri 14 Aug 2026; days 1 to 3 are Saturday, Sunday and the closed Monday.
    expect(kindsAfter([nephrostomy], books({ closed: ["2026-08-17"] }))).toContain("no day left");
    expect(dates(stepAfter([nephrostomy], "call"))).toEqual(["2026-08-17", "2026-08-17", "2026-08-17"]);
  });
});

describe("pins", () => {
  const changed = {
    ...exampleProtocol,
    version: 2,
    intervals: exampleProtocol.intervals.map((row) => ({ ...row, target: 70 })),
  };
  const of = books({
    protocol: (version) => (version === 1 ? exampleProtocol : changed),
    calendar: (version) => (version === 1 ? calendar() : calendar("2026-10-20..2026-10-25")),
  });

  it("keep a date at the versions that its clock started under", () => {
    const step = stepAfter([nephrostomy], "exchange", of);
    expect(step.target).toBe("2026-10-30");
    expect(step.pins).toEqual({ protocol: 1, calendar: 1 });
  });

  it("move it when somebody confirms the new dates: 70 days are Fri 23 Oct, shut, so Mon 19 Oct 2026", () => {
    const confirmedDates = datesConfirmed({ on: "2026-08-20", pins: { protocol: 2, calendar: 2 } });
    const step = stepAfter([nephrostomy, confirmedDates], "exchange", of);
    expect(step.target).toBe("2026-10-19");
    expect(step.pins).toEqual({ protocol: 2, calendar: 2 });
  });
});

describe("the adult table", () => {
  const born = (bornOn: string) => books({ bornOn: day(bornOn) });

  it.each([
    ["the day before the 18th birthday", "2008-08-15", ["no row", "call"]],
    ["on the 18th birthday", "2008-08-14", ["call", "exchange"]],
    ["the day after", "2008-08-13", ["call", "exchange"]],
  ])("placed %s", (_name, bornOn, kinds) => {
    expect(kindsAfter([nephrostomy], born(bornOn))).toEqual(kinds);
  });

  it("gives somebody of unknown age a date that is provisional and says so; a known adult's says nothing", () => {
    const unknown = stepAfter([nephrostomy], "exchange", books({ bornOn: null }));
    expect(dates(unknown)).toEqual(dates(stepAfter([nephrostomy], "exchange")));
    expect([unknown.provisional, whyCodes(unknown).includes("age-unknown")]).toEqual([true, true]);
    const adult = stepAfter([nephrostomy], "exchange");
    expect([adult.provisional, whyCodes(adult).includes("age-unknown")]).toEqual([false, false]);
  });

  it("says why a child has no row, and asks now", () => {
    const step = stepAfter([nephrostomy], "no row", born("2015-01-01"));
    expect(step.dueOn).toBe("2026-08-14");
    expect(whyCodes(step)).toEqual(["no-example-for-child"]);
  });

  it("a child's operator may still plan", () => {
    const planned = [placed({ plan: { act: "exchange", by: "2026-09-30" } })];
    const step = stepAfter(planned, "exchange", born("2015-01-01"));
    expect(step.target).toBe("2026-09-30");
    expect(whyCodes(step)).toEqual(["no-example-for-child", "plan"]);
    expect(kindsAfter(planned, born("2015-01-01"))).not.toContain("no row");
  });

  it("takes nobody for a child who was born on 29 February before 18 years are over", () => {
    expect(kindsAfter([placed({ on: "2026-02-28" })], born("2008-02-29"))).toContain("no row");
    expect(kindsAfter([placed({ on: "2026-03-01" })], born("2008-02-29"))).not.toContain("no row");
  });
});

describe("no row at all", () => {
  it("is a step for a physician, and no date is made up", () => {
    const none = books({ protocol: () => ({ ...exampleProtocol, intervals: [] }) });
    const step = stepAfter([nephrostomy], "no row", none);
    expect(step.owner.role).toBe("physician");
    expect(dates(step)).toEqual([null, "2026-08-14", null]);
  });
});
