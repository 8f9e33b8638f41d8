import { describe, expect, it } from "vitest";
import { readDiaryBlock } from "./diary-block.ts";

const rowsOf = (pasted: string) =>
  readDiaryBlock(pasted).rows.map(({ when, drained, flush, characters }) =>
    [when, drained, flush, characters].join(" | "),
  );
const rareOf = (pasted: string) =>
  readDiaryBlock(pasted).rows.map(({ characters, leak, otherIn }) => [characters, leak, otherIn]);

describe("a pasted block", () => {
  it.each([
    ["tabs", "14 nov 8:00\t40\t10\tbilious\n14:00\t35\t10\t"],
    ["semicolons", "14 nov 8:00;40;10;bilious\r\n14:00;35;10;"],
    ["commas", "14 nov 8:00,40,10,bilious\n14:00,35,10"],
    ["commas and blanks", "14 nov 8:00, 40, 10, bilious\n14:00, 35, 10"],
    ["a text message", "14 nov 8:00 40 10 bilious\n14:00 35 10"],
    ["a date and a time of their own column", "14 nov\t8:00\t40\t10\tbilious\n\t14:00\t35\t10"],
    ["headings", "Time\tDrained (mL)\tFlush\tColor\n14 nov 8:00\t40\t10\tbilious\n14:00\t35\t10\t"],
    ["headings in another order", "Flush;Date;Time;Colour;Out\n10;14 nov;8:00;bilious;40\n10;;14:00;;35"],
    ["headings and commas", "When,Drained,Flush,Look\n14 nov 8:00,40,10,bilious\n14:00,35,10,"],
    ["a day as a heading, blank lines", "\n14 nov\n\n8:00 40 10 bilious\n\n14:00 35 10\n\n"],
  ])("by %s", (_name, pasted) => {
    expect(rowsOf(pasted)).toEqual(["14 nov 8:00 | 40 | 10 | bilious", "14:00 | 35 | 10 | "]);
  });

  it.each([
    ["8:00: 35ml, flush 10ml, bilious", "8:00 | 35ml | 10ml | bilious"],
    ["Sat 14 Nov 2026, 08:00 drained 2 oz", "Sat 14 Nov 2026, 08:00 | 2 oz |  | "],
    ["2026-11-14 8:00 ~40", "2026-11-14 8:00 | ~40 |  | "],
    ["8 pm 35 with 3 x 10", "8 pm | 35 | 3 x 10 | "],
    ["8:00 8,5 ml", "8:00 | 8,5 ml |  | "],
    ["8:00 out ?", "8:00 | ? |  | "],
    ["8:00 half a bag", "8:00 | half a bag |  | "],
    ["14 nov 150", "14 nov | 150 |  | "],
    ["yesterday 9:00 -10", "yesterday 9:00 | -10 |  | "],
    ['"14 nov 8:00"\t"40"', "14 nov 8:00 | 40 |  | "],
    ["14 nov 8:00\t\t10", "14 nov 8:00 |  | 10 | "],
    ["8:00", "8:00 |  |  | "],
  ])("%j", (pasted, row) => {
    expect(rowsOf(pasted)).toEqual([row]);
  });

  it.each([
    [
      "headings",
      "Time\tDrained\tOther fluid put in\tLeak round the tube\tLook\n8:00\t40\tcontrast 20\tdamp\tbilious",
    ],
    ["a heading of a fluid", "When;Out;Irrigation;Leak;Look\n8:00;40;contrast 20;damp;bilious"],
    ["their own words, by tabs", "8:00\t40\t10\tbilious\tdamp\tcontrast 20"],
    ["their own words in any order", "8:00\t40\t10\tcontrast 20\tDamp\tbilious"],
    ["their names", "8:00\t40\t10\tbilious\tleak: damp\tother contrast 20"],
    ["commas", "8:00, 40, 10, bilious, damp, contrast 20"],
    ["a text message", "8:00: 40 ml, flush 10, bilious, leak damp, contrast 20"],
  ])("takes a leak and another fluid along, by %s", (_name, pasted) => {
    expect(rareOf(pasted).map(([seen, leak, fluid]) => [seen, leak?.toLowerCase(), fluid])).toEqual([
      ["bilious", "damp", "contrast 20"],
    ]);
    expect(readDiaryBlock(pasted).rows[0]?.drained).toMatch(/^40/);
  });

  it.each([
    ["8:00\t40\t10\tbilious\tcloudy", ["bilious, cloudy", "", ""]],
    ["8:00\t40\t10\tbilious\tno leak", ["bilious", "none", ""]],
    ["8:00\t40\t10\tleaked a bit", ["", "a bit", ""]],
    ["8:00\t40\t10\tleak", ["", "leak", ""]],
    ["8:00\t40\t10\tnone", ["none", "", ""]],
    ["8:00\t40\t10\tcontrast seen", ["contrast seen", "", ""]],
    ["8:00\t40\t10\tcontrast 20\tirrigation 50", ["", "", "contrast 20, irrigation 50"]],
  ])("%j: what was seen, leak and other fluid each in its place, nothing left out", (pasted, parts) => {
    expect(rareOf(pasted)).toEqual([parts]);
  });

  it("takes a column of figures alone, without times", () => {
    expect(rowsOf("Drained\n40\n\n35\n0\n")).toEqual([" | 40 |  | ", " | 35 |  | ", " | 0 |  | "]);
    expect(rowsOf("40 ml\n35 ml")).toEqual([" | 40 ml |  | ", " | 35 ml |  | "]);
  });

  it("says which lines hold no figure, and keeps everything else", () => {
    const { rows, leftOut } = readDiaryBlock(
      "Diary of the drain\nTime;Drained\n8:00;40\nslept well\n14:00;35",
    );
    expect(leftOut).toEqual(["Diary of the drain", "slept well"]);
    expect(rows.map(({ drained }) => drained)).toEqual(["40", "35"]);
  });

  it("says a day under which nothing stands", () => {
    expect(readDiaryBlock("14 nov\n8:00 40\n15 nov").leftOut).toEqual(["15 nov"]);
  });

  it("of nothing makes nothing", () => {
    expect(readDiaryBlock(" \n\t\n")).toEqual({ rows: [], leftOut: [] });
  });
});
