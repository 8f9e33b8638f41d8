import { describe, expect, it } from "vitest";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { readAnySize } from "#shared/size/read-any-size.ts";
import { readLength } from "#shared/size/read-length.ts";
import { readNeedle } from "#shared/size/read-needle.ts";
import { typedSize } from "#shared/size/typed-size.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

it.each([
  ["F", ["f", "F", "fr", "Fr.", "french", "French", "ch", "charr", "-French"]],
  ["in", ["in", "in.", "inch", "inches", '"', "″", "”"]],
  ["mm", ["mm", "MM"]],
  ["cm", ["cm"]],
  ["G", ["g", "ga", "gauge", "-gauge"]],
] as const)("%s is typed as %j", (unit, words) => {
  for (const word of words)
    expect(typedSize(`8 ${word}`), word).toEqual({
      ok: true,
      value: { certainty: "confirmed", negative: false, digits: "8", unit },
    });
});

describe("commas", () => {
  it.each<[string, string | RefusalCode]>([
    ["2,7 mm", "2.7"],
    ["0,500 mm", "0.500"],
    ["1,5005 mm", "1.5005"],
    ["1234,567 mm", "1234.567"],
    ["1,500 mm", "length-comma-unclear"],
    ["12,345 mm", "length-comma-unclear"],
    ["123,456 mm", "length-comma-unclear"],
    ["12,345,678 mm", "length-comma-unclear"],
    ["1,23,456 mm", "length-not-understood"],
    ["1,2345,678 mm", "length-not-understood"],
    ["2,7", "length-needs-unit"],
  ])("%s: %s", (text, expected) => {
    const read = typedSize(text);
    if (!read.ok) expect(read.refusal).toEqual({ code: expected, args: { text } });
    else expect(read.value).toMatchObject({ digits: expected });
  });
});

describe("a refusal quotes what was typed, without the blanks round it", () => {
  const words = (read: { ok: boolean; refusal?: Parameters<typeof refusalSentence>[0] }): string =>
    read.refusal === undefined ? "read" : refusalSentence(read.refusal);

  it.each([
    [" 21 ", '"21" needs a unit: F, in, mm, cm or G.'],
    [" -21 G ", '"-21 G" must be more than zero.'],
    [" 30 G ", "No outside is kept for 30 G, only for 18, 19, 20, 21, 22 G. Type the outside in mm or in."],
    [" 3 F ", `"3 F" does not tell a needle's outside. Type it like 21 G or 0.8 mm.`],
  ])("a needle of %j", (text, sentence) => {
    expect(words(readNeedle(text))).toBe(sentence);
  });

  it.each([
    [" 8 ", '"8" needs a unit: F, in, mm, cm or G.'],
    [" -8 F ", '"-8 F" must be more than zero.'],
  ])("any size of %j, and a tube's", (text, sentence) => {
    expect(words(readAnySize(text))).toBe(sentence);
    expect(words(readLength(text, { thing: "tube outside", bare: "refuse" }))).toBe(sentence);
  });

  it("what nobody knows, and what is no size", () => {
    for (const [text, trimmed] of [
      [" ? ", "?"],
      [" wide ", "wide"],
    ] as const)
      expect(readAnySize(text)).toEqual({
        ok: false,
        refusal: { code: "length-not-understood", args: { text: trimmed } },
      });
  });
});
