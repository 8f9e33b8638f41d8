import { describe, expect, it } from "vitest";
import { alarmCodes } from "#shared/output/alarm/reason.ts";
import type { Why } from "#shared/step/step.ts";
import { printHours } from "#shared/words/alarm-why.ts";
import { whySentence } from "#shared/words/why.ts";

const sentences: readonly (readonly [Why["code"], Why["args"], string])[] = [
  [
    "alarm-dry",
    { minutes: 430, hours: 6, source: "CP", level: "same day", untilReached: "do not force the flush" },
    "Nothing drained for 7 h 10 min (row: 6 h; source CP). Same day. Until reached: do not force the flush.",
  ],
  [
    "alarm-dry",
    { minutes: 360, hours: 6, source: "CP", level: "on call now", untilReached: null },
    "Nothing drained for 6 h (row: 6 h; source CP). On call now.",
  ],
  ...(
    [
      ["single kidney", "On call now: a single kidney."],
      ["transplant kidney", "On call now: a transplant kidney."],
      ["nothing voided", "On call now: no urine by any way that is known, nothing voided."],
      [
        "nothing voided, other tubes dry",
        "On call now: no urine by any way, nothing voided and the other urinary tubes dry too.",
      ],
      [
        "other tubes dry",
        "On call now: no urine by any way that is known, the other urinary tubes dry too; what is voided is not known.",
      ],
    ] as const
  ).map(
    ([onlyWayOut, says]) =>
      [
        "alarm-dry",
        { minutes: 360, hours: 6, source: "CP", level: "on call now", untilReached: null, onlyWayOut },
        `Nothing drained for 6 h (row: 6 h; source CP). ${says}`,
      ] as const,
  ),
  [
    "alarm-dry",
    { minutes: 360, hours: 6, source: "CP", level: "same day", onlyWayOut: null, otherWays: "not known" },
    "Nothing drained for 6 h (row: 6 h; source CP). Same day. Whether urine comes by another way is not known: ask.",
  ],
  [
    "alarm-found-while-shut",
    {
      day: "2026-08-17",
      signs: "fever, chills, very unwell, pain, jaundice",
      celsius: 38.4,
      pain: 4,
      row: "capped trial with pain, fever, jaundice or leak",
      source: "CP",
      level: "same day",
      untilReached: "reconnect to bag",
    },
    "Found on Mon 17 Aug 2026 while shut: temperature 38.4 °C, shaking chills, feels very unwell, pain 4 of 10 and jaundice (row: capped trial with pain, fever, jaundice or leak; source CP). Same day. Until reached: reconnect to bag.",
  ],
  [
    "alarm-low",
    { day: "2026-08-17", mlPer24h: 99.96, under: 100, source: "CP", level: null, untilReached: null },
    "Low on Mon 17 Aug 2026: 99.96 mL/24 h (row: under 100; source CP).",
  ],
  [
    "alarm-high",
    { day: "2026-08-17", mlPer24h: 3500.04, over: 3000, source: "CP", level: null, untilReached: null },
    "High on Mon 17 Aug 2026: 3500 mL/24 h (row: over 3000; source CP).",
  ],
  [
    "alarm-sudden-drop",
    { day: "2026-08-17", mlPer24h: 320, median: 1500, days: 3, overPercent: 70, andMl: 300, source: "CP" },
    "Sudden drop on Mon 17 Aug 2026: 320 mL/24 h, the median of the 3 complete days before being 1500 (row: over 70 % and 300 mL less; source CP).",
  ],
  [
    "alarm-new-fluid",
    {
      character: "bloody",
      expected: "bilious",
      source: "CP",
      level: "same day",
      untilReached: "keep the tube",
    },
    "New fluid: bloody (expected: bilious; source CP). Same day. Until reached: keep the tube.",
  ],
  [
    "alarm-session-over-ceiling",
    { ml: 1200, over: 1000, source: "MEM" },
    "A session of 1200 mL (row: at most 1000; source MEM).",
  ],
  [
    "alarm-session-symptoms",
    { symptoms: "cough, pain", source: "MEM" },
    "Felt during a session: cough, pain (row: stop; source MEM).",
  ],
  [
    "alarm-session-falling",
    { ml: 300, before: 400, source: "MEM", level: "emergency services" },
    "Breathless, and the session brought 300 mL after 400 (row: less with breathlessness; source MEM). Emergency services.",
  ],
  [
    "alarm-breathless",
    { source: "CP", level: "emergency services" },
    "Breathless when it was drained (row: with any tube; source CP). Emergency services.",
  ],
  ["alarm-air-leak", { source: "MEM" }, "An air leak where there was none (row: no air leak; source MEM)."],
  [
    "alarm-leak-while-shut",
    { leak: "damp", source: "CP", level: "same day", untilReached: "reconnect to bag" },
    "Shut, and the dressing is damp (row: a capped trial with a leak; source CP). Same day. Until reached: reconnect to bag.",
  ],
  [
    "alarm-symptoms-while-shut",
    { symptoms: "pain", source: "CP", level: "same day" },
    "Shut, and felt: pain (row: a capped trial with symptoms; source CP). Same day.",
  ],
  [
    "alarm-soaking-leak",
    { source: "CP", level: "same day" },
    "A leak that soaks the dressing (row: soaking leak; source CP). Same day.",
  ],
];

describe("each reason of an alarm from readings", () => {
  it.each(sentences)("%s %j", (code, args, sentence) => {
    expect(whySentence({ code, args, eventId: null })).toBe(sentence);
  });

  it("has an example of every code", () => {
    const codes = alarmCodes.map((code) => `alarm-${code}`);
    expect(new Set<string>(sentences.map(([code]) => code))).toEqual(new Set(codes));
  });

  it.each([
    [0, "0 min"],
    [20, "20 min"],
    [60, "1 h"],
    [430, "7 h 10 min"],
  ])("%i minutes are %s", (minutes, words) => expect(printHours(minutes)).toBe(words));
});
