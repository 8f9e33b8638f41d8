import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { died, type Entry, exchanged, placed, removed } from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, stepsAfter } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";
import { here, visitBooked, visitNoted, visitPrepared } from "#tests/support/visit-factories.ts";

/** A nephrostomy of Fri 14 Aug 2026: by the example row 63, 77, 90 days, so Fri 16 Oct, Fri 30 Oct, Thu 12 Nov. */
const open = placed({ pins: { protocol: 1, calendar: 1 } });
const missed = visitNoted({ state: "did not attend", reason: "no transport", on: "2026-11-04" });
const visitKinds = ["visit", "prepare visit", "rebook"];
const ofVisits = (...entries: readonly Entry[]) =>
  kindsAfter([open, ...entries]).filter((kind) => visitKinds.includes(kind));

describe("what a visit asks for", () => {
  it("stands on its day, with the tube's own date beside it", () => {
    expect(dates(stepAfter([open, visitBooked()], "visit"))).toEqual([null, "2026-11-04", null]);
    expect(dates(stepAfter([open, visitBooked()], "exchange"))).toEqual([
      "2026-10-16",
      "2026-10-30",
      "2026-11-12",
    ]);
  });

  it("goes to a physician by the row's days past it, like an exchange", () => {
    expect(exampleProtocol.escalation.daysPastTarget).toBe(3);
    expect(stepAfter([open, visitBooked()], "visit").escalatesOn).toBe("2026-11-07");
  });

  it("is of its tube, or of the patient where it is for several", () => {
    const both = [
      { tubeId: "tube-1", act: "exchange" },
      { tubeId: "tube-2", act: "exchange" },
    ] as const;
    const second = placed({ tube: "tube-2", number: 2, side: "right" });
    expect(stepAfter([open, visitBooked()], "visit").tubeId).toBe("tube-1");
    expect(stepAfter([open, second, visitBooked({ tubes: both })], "visit").tubeId).toBeNull();
  });

  it("names what is open, by the earliest day that a row asks for", () => {
    const step = stepAfter([open, visitBooked()], "prepare visit");
    const asked = step.why.filter(({ code }) => code === "to-settle").map(({ args }) => args);
    expect(asked.map(({ thing }) => thing)).toContain("blood thinners");
    expect(step.dueOn).toBe(asked.map(({ day }) => String(day)).toSorted()[0]);
    const settled = visitPrepared({ thing: "blood thinners", by: "Dr. Orla Invented" });
    const after = stepAfter([open, visitBooked(), settled], "prepare visit");
    expect(after.why.map(({ args }) => args.thing)).not.toContain("blood thinners");
  });

  it("what somebody wrote down as open, or as needing its time, stays open", () => {
    for (const state of ["open", "needs its lead time"] as const) {
      const step = stepAfter(
        [open, visitBooked(), visitPrepared({ thing: "allergies", state })],
        "prepare visit",
      );
      expect(step.why.map(({ args }) => args.thing)).toContain("allergies");
    }
  });

  it("nothing is to be settled here before a visit in the hospital's own book", () => {
    const elsewhere = { kind: "elsewhere", where: "Far Dale General", from: 600 } as const;
    expect(ofVisits(visitBooked({ place: elsewhere }))).toEqual(["visit"]);
  });

  it("an exchange on its day ends what it asks for", () => {
    expect(ofVisits(visitBooked(), exchanged({ on: "2026-11-04" }))).toEqual([]);
  });

  it("and so does a death", () => {
    expect(stepsAfter([open, visitBooked(), died({ on: "2026-10-01" })])).toEqual([]);
  });
});

describe("nobody came", () => {
  it("asks to book again at once, and closes nothing", () => {
    expect(ofVisits(visitBooked(), missed)).toEqual(["rebook"]);
    expect(stepAfter([open, visitBooked(), missed], "rebook")).toMatchObject({ dueOn: "2026-11-04" });
    expect(dates(stepAfter([open, visitBooked(), missed], "exchange"))[1]).toBe("2026-10-30");
  });

  it("another booking answers it, unless that is cancelled", () => {
    const again = visitBooked({
      id: "visit-2",
      on: "2026-11-05",
      visitOn: "2026-11-09",
      place: here("10:00"),
    });
    expect(ofVisits(visitBooked(), missed, again)).not.toContain("rebook");
    const cancelled = visitNoted({ visit: "visit-2", state: "cancelled", by: "the ward", on: "2026-11-06" });
    expect(ofVisits(visitBooked(), missed, again, cancelled)).toEqual(["rebook"]);
  });

  it("and so does what was done since, or the end of the record", () => {
    expect(ofVisits(visitBooked(), missed, exchanged({ on: "2026-11-10" }))).toEqual([]);
    expect(ofVisits(visitBooked(), missed, removed({ on: "2026-11-10" }))).toEqual([]);
  });

  /** Rebooked three times: escalation goes by the tube's age, not by the last contact. Common practice, no source. */
  it("three times: the exchange is a physician's from the day after its latest all the same", () => {
    const times = [1, 2, 3].flatMap((n) => [
      visitBooked({ id: `visit-${n}`, on: `2026-10-0${n}`, visitOn: `2026-11-0${n + 1}` }),
      visitNoted({ visit: `visit-${n}`, state: "did not attend", on: `2026-11-0${n + 1}` }),
    ]);
    expect(stepAfter([open, ...times], "exchange").physicianOn).toBe("2026-11-13");
    const rebook = stepAfter([open, ...times], "rebook", books());
    expect(rebook.why[0]?.args.times).toBe(3);
  });
});
