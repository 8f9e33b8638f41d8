import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import type { Why } from "#shared/step/step.ts";
import {
  coversWords,
  interpreterWords,
  marksOfCall,
  nextWords,
  reasonsOf,
  thereNowWords,
  thereWords,
  triedWords,
} from "./call-list.ts";

/** Wednesday, by any calendar of 2026. */
const today = day("2026-08-19");
const why = (code: Why["code"], args: Why["args"] = {}): Why => ({ code, args, eventId: null });
const firstCall = why("first-call", { from: 1, to: 3, source: "CP", day: "2026-08-14" });
const collection = why("collection-call", { day: "2026-08-10", from: 7, to: 14, source: "CP" });

describe("why somebody is rung", () => {
  it("is one sentence of the reason, not of the arithmetic before it", () => {
    const moved = why("moved", {
      end: "target",
      from: "2026-08-15",
      to: "2026-08-17",
      because: "closed-weekday",
    });
    const [reason] = reasonsOf([{ kind: "call", tube: "Left nephrostomy", why: [moved, firstCall] }]);
    expect(reason).toEqual({ tube: "Left nephrostomy", says: expect.stringContaining("day 1 to 3") });
  });

  it("is one for each tube of a call about several", () => {
    const of = (tube: string) => why("of-tube", { tube });
    const lines = [of("Left nephrostomy (tube 1)"), firstCall, of("Abscess drain (tube 2)"), collection];
    expect(reasonsOf([{ kind: "call", tube: null, why: lines }]).map(({ tube }) => tube)).toEqual([
      "Left nephrostomy (tube 1)",
      "Abscess drain (tube 2)",
    ]);
  });

  it("stands once for a tube that several steps speak of", () =>
    expect(
      reasonsOf([
        { kind: "call", tube: "Abscess drain", why: [collection] },
        {
          kind: "diary",
          tube: "Abscess drain",
          why: [why("diary-missing", { day: "2026-08-10", days: 7, source: "CP" })],
        },
        { kind: "call", tube: "Abscess drain", why: [collection] },
      ]).map(({ tube, says }) => [tube, says.match(/source CP/g)?.length]),
    ).toEqual([["Abscess drain", 2]]));

  it("of a red flag says who has it", () => {
    const flag = why("red-flag", { level: "same day", says: "fever", untilReached: null });
    const [reason] = reasonsOf([{ kind: "red flag", tube: null, why: [flag, why("flag-not-handed")] }]);
    expect(reason?.says).toBe("Red flag, same day: fever. Handed to nobody yet.");
  });

  it("is at least what is asked for", () =>
    expect(reasonsOf([{ kind: "whereabouts", tube: null, why: [] }])).toEqual([
      { tube: null, says: "Ask where the patient is." },
    ]));
});

const tries = [
  { on: day("2026-08-17"), time: "10:00", to: "the patient", outcome: "voicemail" },
  { on: day("2026-08-18"), time: "18:10", to: "the patient", outcome: "no answer" },
] as const;
const next = { next: "call", on: today, at: null, part: "evening", tried: 2, of: 3 } as const;

describe("what was tried, and what is next", () => {
  it("is a line", () => {
    expect(triedWords({ tries, next }, today)).toBe("2 of 3 tries: voicemail Mon 10:00, no answer Tue 18:10");
    expect(triedWords({ tries: [], next: null }, today)).toBeNull();
    const letter = { on: day("2026-08-03"), time: null, to: "the patient", outcome: null } as const;
    expect(triedWords({ tries: [letter], next: { ...next, of: null } }, today)).toBe(
      "1 try: letter to the patient Mon 3 Aug",
    );
  });

  it.each([
    [{ dueOn: today, nextTime: null, nextPart: "evening", story: { next } }, "Today, in the evening"],
    [
      { dueOn: today, nextTime: "18:00", nextPart: null, story: { next: { ...next, next: "call back" } } },
      "Today at 18:00, as they asked",
    ],
    [
      { dueOn: day("2026-08-17"), nextTime: null, nextPart: null, story: { next: null } },
      "Since Mon 17 Aug 2026",
    ],
    [
      {
        dueOn: day("2026-08-21"),
        nextTime: null,
        nextPart: null,
        story: { next: { ...next, next: "letter" } },
      },
      "Fri 21 Aug 2026: send the letter",
    ],
  ] as const)("%#: is said with its day", (line, words) =>
    expect(nextWords({ ...line, there: null }, today)).toBe(words),
  );

  it("of somebody who lives by another clock says whose evening it is, and what that clock shows", () => {
    const there = { zone: zone("America/Denver"), time: "10:00", aheadMinutes: -480 };
    const line = { dueOn: today, nextTime: null, nextPart: "evening", story: { next }, there } as const;
    expect(nextWords(line, today)).toBe("Today, in the evening there");
    expect(thereNowWords(there)).toBe("10:00 there now: the patient's clock is 8 h behind, America/Denver");
    const kathmandu = { zone: zone("Asia/Kathmandu"), time: "21:45", aheadMinutes: 345 };
    expect(thereWords(kathmandu)).toBe("the patient's clock is 5 h 45 min ahead, Asia/Kathmandu");
    expect([thereWords(null), thereNowWords(null)]).toEqual([null, null]);
  });

  it("marks say why a line stands before others", () => {
    const plain = {
      flagPending: false,
      inTrial: false,
      firstHoursUntil: null,
      latestOn: null,
      attemptsLeft: 3,
    };
    expect(marksOfCall(plain, today)).toEqual([]);
    const all = {
      flagPending: true,
      inTrial: false,
      firstHoursUntil: today,
      latestOn: day("2026-08-18"),
      attemptsLeft: 1,
    };
    expect(marksOfCall(all, today)).toEqual([
      "red flag, nobody has it",
      "first hours",
      "past latest, Tue 18 Aug 2026",
      "last attempt",
    ]);
    expect(marksOfCall({ ...all, latestOn: today, firstHoursUntil: day("2026-08-18") }, today)).not.toContain(
      "first hours",
    );
  });
});

it("an interpreter who may be needed is never taken for none", () => {
  expect(interpreterWords({ needsInterpreter: false, language: "Polish" })).toBeNull();
  expect(interpreterWords({ needsInterpreter: true, language: "Farsi" })).toBe("interpreter: Farsi");
  expect(interpreterWords({ needsInterpreter: null, language: "" })).toBe(
    "language and interpreter not known",
  );
});

it("who covers is said by name, and for which trial nobody has said", () => {
  const trial = (tube: string, covers: string | null) => ({ familyName: "Example", tube, covers });
  expect(coversWords([])).toBe("No trial runs.");
  expect(
    coversWords([trial("a", "the ward"), trial("b", "Dr Example"), trial("c", null), trial("d", "the ward")]),
  ).toBe(
    "Trials are covered by Dr Example and the ward. Of 1 running trial nobody has said who covers: Example, c.",
  );
});
