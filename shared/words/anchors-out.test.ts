import { describe, expect, it } from "vitest";
import type { Why } from "#shared/step/step.ts";
import { anchorWhy } from "./anchors-out.ts";
import { whySentence } from "./why.ts";

const sentences: readonly (readonly [keyof typeof anchorWhy, Why["args"], string])[] = [
  [
    "anchors-row",
    { holds: "anchors", from: 10, to: 14, source: "CP" },
    "Anchors out on day 10 to 14 after the puncture (source CP).",
  ],
  [
    "anchors-row",
    { holds: "suture", from: 14, to: 21, source: "CP" },
    "Suture out on day 14 to 21 after the tube was put in (source CP).",
  ],
  [
    "held-at-skin",
    { fixation: "disc" },
    "Fixed at the skin by: disc. Nobody said whether there are anchors or a suture.",
  ],
  ["held-at-skin", { fixation: "3 anchors, disc" }, "Fixed at the skin by: 3 anchors, disc."],
  ["held-at-skin", { fixation: null }, "Nobody said how it is fixed at the skin: there may be none."],
  ["start-unknown", {}, "The day that this counts from is unknown: asked at once."],
];

describe("why anchors or a suture are asked about, in words", () => {
  it.each(sentences)("%s %j", (code, args, sentence) =>
    expect(whySentence({ code, args, eventId: null })).toBe(sentence),
  );

  it("has an example of every code", () => {
    expect(new Set<string>(sentences.map(([code]) => code))).toEqual(new Set(Object.keys(anchorWhy)));
  });
});
