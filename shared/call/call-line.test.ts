import { describe, expect, it } from "vitest";
import { openSteps } from "#shared/step/open-steps.ts";
import { fold } from "#shared/tube/fold.ts";
import {
  flagDone,
  flagHanded,
  flagRaised,
  letterSent,
  notReachedDecided,
  rang,
} from "#tests/support/call-factories.ts";
import { blocked, died, type Entry, placed, trialStarted } from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";
import { type CallLine, callLineOf } from "./call-line.ts";

/**
 * A patient's line by the example rows (common practice, no source): called on day 1 to 3 after a placement, 3 attempts, the first 72 hours
 * and trials apart. Days by any calendar of 2026: 14 August is a Friday, so that day 1 to 3 leaves Monday the 17th.
 */
const lineOf = (...entries: readonly Entry[]): CallLine | null => {
  const state = fold(history(...entries));
  return callLineOf(state, openSteps(state, books()), books());
};

const nephrostomy = placed();
const left = placed({ tube: "tube-2", side: "left", kind: "abscess drain" });
const first = rang({ on: "2026-08-17", at: "10:00" });

describe("a patient's line in the call list", () => {
  it("is due on the day of the call, with every attempt left and the first hours by the row", () => {
    expect(lineOf(nephrostomy)).toEqual({
      dueOn: "2026-08-17",
      flagPending: false,
      inTrial: false,
      firstHoursUntil: "2026-08-17",
      latest: "2026-08-17",
      attemptsLeft: 3,
      livesIn: null,
      best: [],
      story: { next: null, tries: [], trials: [] },
    });
  });

  it("is one for all tubes, by what is due first", () => {
    const both = lineOf(nephrostomy, placed({ tube: "tube-2", side: "left", on: "2026-08-24" }));
    expect(both?.dueOn).toBe("2026-08-17");
    expect(lineOf(left)?.dueOn).toBe("2026-08-17");
  });

  it("moves to the next try, with one attempt fewer and the time that was asked for", () => {
    expect(lineOf(nephrostomy, first)).toMatchObject({
      attemptsLeft: 2,
      story: {
        next: { next: "call", tried: 1, of: 3 },
        tries: [{ on: "2026-08-17", time: "10:00", outcome: "no answer" }],
      },
    });
    const back = rang({
      on: "2026-08-17",
      at: "10:00",
      outcome: "call back",
      back: "2026-08-19",
      backAt: "18:00",
    });
    expect(lineOf(nephrostomy, back)).toMatchObject({
      dueOn: "2026-08-19",
      story: { next: { next: "call back", at: "18:00" } },
    });
  });

  it("stays while a letter or a physician is next, with no attempt left", () => {
    const tries = ["18", "19"].map((day) =>
      rang({ on: `2026-08-${day}`, at: "18:30", outcome: "voicemail" }),
    );
    const other = rang({ on: "2026-08-20", at: "11:00", to: "the alternate contact" });
    expect(lineOf(nephrostomy, first, ...tries)).toMatchObject({
      attemptsLeft: 0,
      story: { next: { next: "alternate contact" } },
    });
    const letter = [nephrostomy, first, ...tries, other, letterSent({ on: "2026-08-21" })];
    expect(lineOf(...letter)?.story).toMatchObject({
      next: { next: "referrer and family doctor" },
      tries: [{}, {}, {}, { to: "the alternate contact" }, { to: "the patient", outcome: null }],
    });
    const decided = notReachedDecided({ on: "2026-08-24", again: "2026-09-14" });
    expect(lineOf(...letter, decided)).toMatchObject({
      dueOn: "2026-09-14",
      attemptsLeft: 3,
      story: { next: null },
    });
  });

  it("comes back on an open day where a physician named a closed one, with whatever else is open", () => {
    const stent = placed({ kind: "ureteral stent" });
    const letter = [stent, first, letterSent({ on: "2026-08-18" })];
    const decided = notReachedDecided({ on: "2026-08-19", again: "2026-09-12" });
    expect(lineOf(...letter, decided)?.dueOn).toBe("2026-09-14");
  });

  it("a red flag that nobody has is due at once whatever was tried, and until it is done", () => {
    const flag = flagRaised({ on: "2026-08-17", at: "11:00" });
    expect(lineOf(nephrostomy, first, flag)).toMatchObject({ dueOn: "2026-08-17", flagPending: true });
    expect(lineOf(nephrostomy, flag, flagHanded({ at: "11:10" }))).toMatchObject({
      dueOn: "2026-08-17",
      flagPending: false,
    });
    expect(
      lineOf(nephrostomy, flag, flagHanded({ at: "11:10" }), flagDone({ at: "11:20" }))?.flagPending,
    ).toBe(false);
  });

  it("says who covers a trial, or that nobody said", () => {
    const trial = lineOf(nephrostomy, trialStarted({ on: "2026-08-18", covers: "the ward" }));
    expect(trial).toMatchObject({ inTrial: true, story: { trials: [{ covers: "the ward" }] } });
    expect(lineOf(nephrostomy, trialStarted({ on: "2026-08-18" }))?.story.trials[0]?.covers).toBeNull();
  });

  it("is none of somebody who died", () => {
    expect(lineOf(nephrostomy, died({ on: "2026-08-18" }))).toBeNull();
  });
});

describe("laws of the line", () => {
  const patients: readonly (readonly Entry[])[] = [
    [nephrostomy],
    [nephrostomy, first, flagRaised()],
    [nephrostomy, left, first, trialStarted({ on: "2026-08-18" })],
    [left, rang({ on: "2026-08-17", outcome: "voicemail" })],
  ];

  it.each(patients)("%#: the order of steps changes nothing", (...entries) => {
    const state = fold(history(...entries));
    const steps = openSteps(state, books());
    const line = callLineOf(state, steps, books());
    expect(line).not.toBeNull();
    for (let from = 0; from < steps.length; from += 1)
      expect(
        callLineOf(state, [...steps.slice(from), ...steps.slice(0, from)].toReversed(), books()),
      ).toEqual(line);
  });

  it("what comes up after a try does not wait for the next one", () => {
    const back = rang({ on: "2026-08-17", at: "10:00", outcome: "call back", back: "2026-08-28" });
    expect(lineOf(nephrostomy, back)?.dueOn).toBe("2026-08-28");
    expect(lineOf(nephrostomy, back, blocked({ on: "2026-08-19" }))?.dueOn).toBe("2026-08-19");
  });
});
