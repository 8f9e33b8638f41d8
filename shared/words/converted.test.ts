import { expect, it } from "vitest";
import { readAnySize } from "#shared/size/read-any-size.ts";
import { convertedDoubt, convertedRows } from "#shared/words/converted.ts";

function sizeOf(text: string) {
  const read = readAnySize(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}
const says = (text: string) => convertedRows(sizeOf(text)).map((row) => [row.word.split(" ")[0], row.says]);
const noteOf = (text: string, word: string) =>
  convertedRows(sizeOf(text)).find((row) => row.word.startsWith(word))?.note;

// 1 F = 1/3 mm of outer diameter and the stated outside: ISO 20696:2018, 5.5.2; 1 in = 25.4 mm. The rest is arithmetic.
it.each<[string, string[][]]>([
  [
    "8 F",
    [
      ["French", "8 F"],
      ["Inches", "0.105 in"],
      ["Millimetres", "2.67 mm"],
      ["A", "2.7 mm"],
    ],
  ],
  [
    "9 F",
    [
      ["French", "9 F"],
      ["Inches", "0.118 in"],
      ["Millimetres", "3 mm"],
      ["A", "3 mm"],
    ],
  ],
  [
    ".035 in",
    [
      ["French", "2.67 F"],
      ["Inches", "0.035 in"],
      ["Millimetres", "0.889 mm"],
    ],
  ],
  [
    "2,7 mm",
    [
      ["French", "8.1 F"],
      ["Inches", "0.106 in"],
      ["Millimetres", "2.7 mm"],
      ["A", "2.7 mm"],
    ],
  ],
  [
    "25 cm",
    [
      ["Inches", "9.843 in"],
      ["Millimetres", "250 mm"],
      ["Centimetres", "25 cm"],
    ],
  ],
  // Needle gauge comparison chart, regular wall: 0.03225 in outside.
  [
    "21 G",
    [
      ["Gauge", "21 G"],
      ["French", "2.46 F"],
      ["Inches", "0.03225 in"],
      ["Millimetres", "0.819 mm"],
    ],
  ],
])("%s in the trade's units", (text, rows) => {
  expect(says(text)).toEqual(rows);
});

it.each([
  ["8 F", "2.37 mm to 3.03 mm"],
  ["9 F", "2.67 mm to 3.33 mm"],
  ["8.5 F", "2.57 mm to 3.23 mm"],
])("%s may measure %s (ISO 20696:2018, 5.5.2)", (text, range) => {
  expect(noteOf(text, "A tube's outside")).toContain(range);
});

it("says that French and a gauge tell no inside, wherever they stand", () => {
  expect(noteOf("8 F", "French")).toContain("It tells no inside.");
  expect(noteOf("1.9 mm", "French")).toContain("As an outside only");
  expect(noteOf("21 G", "Gauge")).toContain("A gauge tells no inside");
});

it.each([
  ["0.35 in", "No wire is 0.350 in thick. Is 0.035 in meant?"],
  ["0.53 in", null],
  ["0.052 in", null],
  ["0.035 in", null],
  ["8.9 mm", null],
  ["8 F", null],
  ["21 G", null],
])("%s asks what is meant: %s", (text, asks) => {
  expect(convertedDoubt(sizeOf(text))).toBe(asks);
});
