import { describe, expect, it } from "vitest";
import { callPayloads } from "#shared/tube/call-payloads.ts";
import {
  flagDone,
  flagHanded,
  flagRaised,
  letterSent,
  notReachedDecided,
  rang,
  toldOfTube,
} from "#tests/support/call-factories.ts";
import type { Entry } from "#tests/support/factories.ts";
import { storySentence } from "./events.ts";

const fever = { question: "fever", asks: "A temperature of 38.0 C or more?", of: null } as const;
const draining = { question: "draining", asks: "Is anything draining?", of: { tube: "tube-2", number: 2 } };

const told: readonly (readonly [Entry, string])[] = [
  [rang(), "Rang the patient: no answer."],
  [
    rang({
      to: "the alternate contact",
      number: "555 0117",
      outcome: "call back",
      back: "2026-08-18",
      backAt: "18:00",
    }),
    "Rang the alternate contact: call back, on 555 0117, ring back on Tue 18 Aug 2026 at 18:00.",
  ],
  [
    rang({
      outcome: "reached the patient",
      back: "2026-08-18",
      interpreter: "Farsi, by telephone",
      answers: [
        { ...fever, says: "no" },
        { ...draining, says: "does not know" },
        { ...fever, says: "not asked" },
      ],
      note: "Well.",
    }),
    "Rang the patient: reached the patient, ring back on Tue 18 Aug 2026, through Farsi, by telephone, A temperature of 38.0 C or more? no; Is anything draining? (tube 2) does not know. Well.",
  ],
  [letterSent({ note: "By post." }), "Letter sent: to the patient. By post."],
  [
    notReachedDecided(),
    "Not reached: Dr Example decided, called again from Mon 14 Sep 2026. asked the referrer.",
  ],
  [
    notReachedDecided({ again: null }),
    "Not reached: Dr Example decided, nobody is called any more. asked the referrer.",
  ],
  [flagRaised(), "Red flag, same day: 38.0 C and over."],
  [
    flagRaised({
      of: { tube: "tube-2", number: 2 },
      untilReached: "reconnect to bag",
      toldBy: "the daughter",
    }),
    "Red flag, same day: 38.0 C and over (tube 2), until reached: reconnect to bag, told by the daughter.",
  ],
  [flagHanded({ note: "By telephone." }), "Red flag handed: to Dr Example. By telephone."],
  [flagDone(), "Red flag: what was done, by Dr Example. seen, antibiotic begun."],
  [toldOfTube({ language: "Polish" }), "Told of the tube: the patient, in Polish, by the nurse."],
];

describe("calls and red flags in the story", () => {
  it.each(told)("%#: %j", ({ kind, payload }, sentence) =>
    expect(storySentence({ kind, payload }, () => "somebody")).toBe(sentence),
  );

  it("has an example of every kind", () => {
    expect(new Set<string>(told.map(([{ kind }]) => kind))).toEqual(new Set(Object.keys(callPayloads)));
  });
});
