import { describe, expect, it } from "vitest";
import type { Why } from "#shared/step/step.ts";
import { callWhy } from "./call-why.ts";
import { whySentence } from "./why.ts";

const row = { source: "CP" };
const next = { tried: 2, of: 3, day: "2026-08-19", at: null, part: null, ...row };

const sentences: readonly (readonly [keyof typeof callWhy, Why["args"], string])[] = [
  [
    "collection-call",
    { day: "2026-08-17", from: 7, to: 14, ...row },
    "A drain of a collection is called about every 7 to 14 days until it is out: last on Mon 17 Aug 2026 (source CP).",
  ],
  [
    "collection-call",
    { day: "2026-08-17", from: 7, to: 7, ...row },
    "A drain of a collection is called about every 7 days until it is out: last on Mon 17 Aug 2026 (source CP).",
  ],
  [
    "exchange-call",
    { day: "2026-10-30", days: 21, workingDays: 2, ...row },
    "Called 21 days and 2 working days before Fri 30 Oct 2026 (source CP).",
  ],
  ["missed-call", { day: "2026-09-08" }, "Nobody came on Tue 8 Sep 2026: ask why."],
  [
    "discharge-call",
    { day: "2026-09-14", from: 1, to: 3, ...row },
    "Home from the hospital since Mon 14 Sep 2026: called on day 1 to 3 (source CP).",
  ],
  ["trial-call", { day: "2026-09-05" }, "The call of the trial on Sat 5 Sep 2026 reached nobody."],
  [
    "removal-call",
    { day: "2026-09-01", from: 1, to: 3, ...row },
    "Removed on Tue 1 Sep 2026: called on day 1 to 3 after it (source CP).",
  ],
  ["of-tube", { tube: "Left nephrostomy (tube 2)" }, "Left nephrostomy (tube 2):"],
  [
    "next-try",
    { ...next, next: "call", part: "evening" },
    "Tried 2 of 3 times and nobody reached: the next attempt on Wed 19 Aug 2026, in the evening (source CP).",
  ],
  [
    "next-try",
    { ...next, next: "call back", at: "18:00" },
    "Tried 2 of 3 times and nobody reached: they asked to be rung back on Wed 19 Aug 2026 at 18:00 (source CP).",
  ],
  [
    "next-try",
    { ...next, next: "physician", of: null, source: null },
    "Tried 2 times and nobody reached: a physician decides on Wed 19 Aug 2026 (no row says what follows).",
  ],
  [
    "call-again",
    { day: "2026-09-14", decidedBy: "Dr Example" },
    "Nobody was reached: Dr Example decided that the calls go on from Mon 14 Sep 2026.",
  ],
  [
    "wrong-number",
    { number: "555 0117" },
    "555 0117 is somebody else's: find another, and take that one out of the record.",
  ],
  [
    "wrong-number",
    { number: null },
    "The number is somebody else's: find another, and take that one out of the record.",
  ],
  [
    "red-flag",
    { level: "same day", says: "38.0 C and over", untilReached: "reconnect to bag" },
    "Red flag, same day: 38.0 C and over. Until somebody is reached: reconnect to bag.",
  ],
  ["red-flag", { level: "same day", says: "fever", untilReached: null }, "Red flag, same day: fever."],
  ["flag-not-handed", {}, "Handed to nobody yet."],
  [
    "flag-handed",
    { to: "Dr Example", day: "2026-08-24", at: "10:20" },
    "Handed to Dr Example, Mon 24 Aug 2026 at 10:20. What was done is not recorded.",
  ],
  [
    "flag-handed",
    { to: "Dr Example", day: "2026-08-24", at: null },
    "Handed to Dr Example, Mon 24 Aug 2026. What was done is not recorded.",
  ],
  [
    "diary-missing",
    { day: "2026-08-24", days: 7, ...row },
    "The last volume is of Mon 24 Aug 2026; asked for after 7 days without one (source CP).",
  ],
  [
    "not-told",
    {},
    "Nobody has recorded that the patient was told of this tube, in their own language. A tube that lies wholly inside is forgotten by whoever does not know of it.",
  ],
];

describe("why somebody is called, in words", () => {
  it.each(sentences)("%s %j", (code, args, sentence) =>
    expect(whySentence({ code, args, eventId: null })).toBe(sentence),
  );

  it("has an example of every code", () => {
    expect(new Set<string>(sentences.map(([code]) => code))).toEqual(new Set(Object.keys(callWhy)));
  });
});
