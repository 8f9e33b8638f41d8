import { describe, expect, it } from "vitest";
import { addDays, day, weekdayOf } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { fold } from "#shared/tube/fold.ts";
import { letterSent, rang } from "#tests/support/call-factories.ts";
import { type Entry, placed } from "#tests/support/factories.ts";
import { calendar, history } from "#tests/support/told.ts";
import { nextTry } from "./next-try.ts";
import { clocksOf, reachedAnyTime } from "./reach.ts";
import { rungs } from "./rungs.ts";

/**
 * Attempts and what follows them, by the example rows (common practice, no source): 3 attempts on different days and at different times within
 * 5 working days, twice the same day in trials and the first 72 h, then the alternate contact, a letter, referrer and family doctor, a
 * physician. That a share of people is reached by no number of attempts is published: 27 to 32 % after four (Academic Emergency Medicine
 * 2013, two arms), so that the list has to carry them on.
 *
 * Monday 17 August 2026 is the day of the first try; weekdays by any calendar of 2026.
 */
const utc = zone("UTC");
const asked = {
  rows: exampleProtocol.calls,
  calendar: calendar(),
  early: null,
  clocks: clocksOf(utc, reachedAnyTime),
} as const;

const tried = (...entries: readonly Entry[]) => fold(history(placed({ on: "2026-08-14" }), ...entries)).calls;

const next = (entries: readonly Entry[], of: Partial<Parameters<typeof nextTry>[1]> = {}) => {
  const found = nextTry(tried(...entries), { ...asked, ...of });
  return found === null ? null : [found.next, found.on, found.part ?? found.at];
};

const first = rang({ on: "2026-08-17", at: "10:00" });
const second = rang({ on: "2026-08-18", at: "14:10", outcome: "voicemail" });
const third = rang({ on: "2026-08-19", at: "18:30" });
const alternate = rang({ on: "2026-08-20", at: "11:00", to: "the alternate contact" });
const letter = letterSent({ on: "2026-08-21" });
const doctors = letterSent({ on: "2026-08-28", to: "the referrer and the family doctor" });

describe("the next try", () => {
  it.each([
    ["nothing tried", [], null],
    ["another day, another part of it", [first], ["call", "2026-08-18", "afternoon"]],
    ["a voicemail reached nobody", [first, second], ["call", "2026-08-19", "evening"]],
    ["attempts used up", [first, second, third], ["alternate contact", "2026-08-20", null]],
    ["then a letter", [first, second, third, alternate], ["letter", "2026-08-21", null]],
    [
      "five working days for an answer",
      [first, second, third, alternate, letter],
      ["referrer and family doctor", "2026-08-28", null],
    ],
    [
      "a physician comes last",
      [first, second, third, alternate, letter, doctors],
      ["physician", "2026-09-04", null],
    ],
  ] as const)("%s", (_name, entries, answer) => expect(next(entries)).toEqual(answer));

  it("falls on no closed day: after a Friday comes Monday, after Monday in a closure Wednesday", () => {
    expect(next([rang({ on: "2026-08-21", at: "10:00" })])).toEqual(["call", "2026-08-24", "afternoon"]);
    const closed = calendar("2026-08-18..2026-08-18");
    expect(next([first], { calendar: closed })).toEqual(["call", "2026-08-19", "afternoon"]);
  });

  it("is on the same day once in the first hours, and in a trial, which closed days do not interrupt", () => {
    expect(next([first], { early: "the first hours" })).toEqual(["call", "2026-08-17", "afternoon"]);
    const again = rang({ on: "2026-08-17", at: "14:00" });
    expect(next([first, again], { early: "the first hours" })).toEqual(["call", "2026-08-18", "evening"]);
    const friday = [rang({ on: "2026-08-21", at: "10:00" }), rang({ on: "2026-08-21", at: "17:30" })];
    expect(next(friday, { early: "a trial" })).toEqual(["call", "2026-08-22", "morning"]);
    // Late in the evening no part of the day is left.
    const late = rang({ on: "2026-08-17", at: "19:30" });
    expect(next([late], { early: "a trial" })).toEqual(["call", "2026-08-18", "morning"]);
  });

  it("is within five working days of the first", () => {
    expect(nextTry(tried(first), asked)).toMatchObject({ latest: "2026-08-24", tried: 1, of: 3 });
  });

  it("is when they asked to be rung, and never at night", () => {
    const back = (at: string) => rang({ outcome: "call back", back: "2026-08-18", backAt: at });
    expect(next([back("18:00")])).toEqual(["call back", "2026-08-18", "18:00"]);
    expect(next([back("03:00")])).toEqual(["call back", "2026-08-18", "09:00"]);
    expect(next([back("23:30")])).toEqual(["call back", "2026-08-18", "19:00"]);
  });

  it("is at no night of the patient's own clock, and in another part of that patient's day", () => {
    // In August it is six hours earlier in Denver than in the clinic's zone, UTC: 10:00 there is 16:00 here.
    const clocks = clocksOf(utc, { livesIn: zone("America/Denver") });
    const back = (at: string) => rang({ outcome: "call back", back: "2026-08-18", backAt: at });
    expect(next([back("10:00")], { clocks })).toEqual(["call back", "2026-08-18", "15:00"]);
    expect(next([back("18:00")], { clocks })).toEqual(["call back", "2026-08-18", "18:00"]);
    const morningThere = rang({ on: "2026-08-17", at: "16:00" });
    expect(next([morningThere])).toEqual(["call", "2026-08-18", "evening"]);
    expect(next([morningThere], { clocks })).toEqual(["call", "2026-08-18", "afternoon"]);
  });

  it("rings nobody back on a closed day but in a trial: who asked for Saturday is rung on Monday", () => {
    const saturday = [rang({ outcome: "call back", back: "2026-08-22", backAt: "10:00" })];
    expect(next(saturday)).toEqual(["call back", "2026-08-24", "10:00"]);
    expect(next(saturday, { early: "the first hours" })).toEqual(["call back", "2026-08-24", "10:00"]);
    expect(next(saturday, { early: "a trial" })).toEqual(["call back", "2026-08-22", "10:00"]);
  });

  it("is no rung back for ever: after as many as attempts, the next rung", () => {
    const back = (on: string) => rang({ on, outcome: "call back", back: "2026-08-28" });
    const days = ["2026-08-17", "2026-08-18", "2026-08-19", "2026-08-20"];
    expect(next(days.slice(0, 3).map(back))).toEqual(["call back", "2026-08-28", null]);
    expect(next(days.map(back))).toEqual(["alternate contact", "2026-08-21", null]);
  });

  it("without a row for attempts asks a physician after one, and says that no row says more", () => {
    const rows = { ...exampleProtocol.calls!, notReached: null, rungs: [] };
    expect(nextTry(tried(first), { ...asked, rows })).toMatchObject({
      next: "physician",
      on: "2026-08-17",
      of: null,
      source: null,
    });
    expect(nextTry(tried(first), { ...asked, rows: null })).toMatchObject({ next: "physician" });
  });

  it("without rungs asks a physician when the attempts are used up", () => {
    const rows = { ...exampleProtocol.calls!, rungs: [] };
    expect(next([first, second, third], { rows })).toEqual(["physician", "2026-08-19", null]);
  });
});

describe("laws of the next try", () => {
  const asksBack = (said: Parameters<typeof rang>[0]) => rang({ at: "10:00", outcome: "call back", ...said });

  it("two tries at equal times, recorded in either order, give one ladder", () => {
    const pairs = [
      [rang({ at: "10:00", outcome: "voicemail" }), rang({ at: "10:00", outcome: "no answer" })],
      [rang({ at: "10:00", outcome: "reached the patient" }), rang({ at: "10:00", outcome: "no answer" })],
      [rang({ at: "10:00", outcome: "wrong number" }), rang({ at: "10:00", outcome: "refused" })],
      [asksBack({ back: "2026-08-20" }), rang({ at: "10:00", outcome: "no answer" })],
      [asksBack({ back: "2026-08-20", backAt: "15:00" }), asksBack({ back: "2026-08-21" })],
      [asksBack({ back: "2026-08-20", backAt: "15:00" }), asksBack({ back: "2026-08-20" })],
    ] as const;
    for (const [one, other] of pairs)
      expect(nextTry(tried(one, other), asked)).toEqual(nextTry(tried(other, one), asked));
  });

  it("of two that ask to be rung back at one minute the earlier day holds, and no other answer of that minute puts it off", () => {
    const asks = asksBack({ back: "2026-08-20", backAt: "15:00" });
    const expected = { next: "call back", on: "2026-08-20", at: "15:00" };
    expect(nextTry(tried(asks, asksBack({ back: "2026-08-21" })), asked)).toMatchObject(expected);
    expect(nextTry(tried(asks, rang({ at: "10:00" })), asked)).toMatchObject(expected);
  });

  it("whatever comes of each try, no path ends, none has more than three alike running, and a physician has it in the end", () => {
    const outcomes = ["voicemail", "no answer", "wrong number", "refused"] as const;
    for (const outcome of outcomes) {
      const entries: Entry[] = [];
      const kinds: string[] = [];
      let on = day("2026-08-17");
      for (let step = 0; step < 12; step += 1) {
        const found = entries.length === 0 ? null : nextTry(tried(...entries), asked);
        const what = found?.next ?? "call";
        on = found?.on ?? on;
        expect(weekdayOf(on)).toBeLessThan(6);
        kinds.push(what);
        if (what === "physician") break;
        if (what === "letter") entries.push(letterSent({ on }));
        else if (what === "referrer and family doctor")
          entries.push(rang({ on, to: "the referrer", outcome }));
        else if (what === "alternate contact")
          entries.push(rang({ on, to: "the alternate contact", outcome }));
        else entries.push(rang({ on, at: "10:00", outcome }));
        on = addDays(on, 1);
      }
      expect(kinds).toEqual(["call", "call", "call", ...rungs]);
    }
  });
});
