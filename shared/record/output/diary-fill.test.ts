import { describe, expect, it } from "vitest";
import { readDiaryBlock } from "#shared/record/output/diary-block.ts";
import { asPasted, fillDiary, firstFreeRow } from "./diary-fill.ts";

const drained = { row: 1, cell: "drained" } as const;
const rows = (pasted: string) => readDiaryBlock(pasted).rows;

describe("what is pasted into a diary", () => {
  it("fills the rows from the one it is pasted into; a blank cell leaves what stands there", () => {
    const at = { row: 2, cell: "when" } as const;
    const { texts, over } = fillDiary(
      { when2: "8:00" },
      rows("14 nov 8:00\t40\t10\n14:00\t35\t\tbilious"),
      at,
    );
    expect(texts).toEqual({
      when2: "14 nov 8:00",
      drained2: "40",
      flush2: "10",
      when3: "14:00",
      drained3: "35",
      characters3: "bilious",
    });
    expect(over).toEqual([]);
  });

  it("a column of figures alone is one a day: after the first row each a day after the row before", () => {
    expect(fillDiary({ when1: "14 nov 8:00" }, rows("Drained\n40\n35\n\n30"), drained).texts).toEqual({
      drained1: "40",
      drained2: "35",
      when2: "+1",
      drained3: "30",
      when3: "+1",
    });
  });

  it("a column goes beside the times that stand there already", () => {
    const stood = { when1: "14 nov 8:00", when2: "14:00", when3: "22:00" };
    expect(fillDiary(stood, rows("40\n35\n30"), drained).texts).toEqual({
      drained1: "40",
      drained2: "35",
      drained3: "30",
    });
  });

  it("a column goes into the cell that it is pasted into, times into theirs", () => {
    expect(fillDiary({ when1: "8", when2: "14" }, rows("10\n20"), { row: 1, cell: "flush" }).texts).toEqual({
      flush1: "10",
      flush2: "20",
    });
    expect(fillDiary({}, rows("8\n14"), { row: 1, cell: "when" }).texts).toEqual({ when1: "8", when2: "14" });
    expect(fillDiary({}, rows("14 nov 8:00\n14:00"), drained).texts).toEqual({
      when1: "14 nov 8:00",
      when2: "14:00",
    });
  });

  it("gives back the rows for which there is no room, as they can be pasted again", () => {
    const pasted = rows(Array.from({ length: 22 }, (_, index) => `8:00 ${index} 10 bilious`).join("\n"));
    const { texts, over } = fillDiary({}, pasted, drained);
    expect(texts.drained20).toBe("19");
    expect(rows(over.map(asPasted).join("\n"))).toEqual(pasted.slice(20));
  });

  it("puts a leak and another fluid into their cells, and gives them back where there is no room", () => {
    const line = "8:00\t40\t10\tbilious\tleak a bit\tcontrast 20, irrigation 50";
    const pasted = rows([line, line].join("\n"));
    const { texts, over } = fillDiary({}, pasted, { row: 20, cell: "drained" });
    expect(texts).toMatchObject({ leak20: "a bit", otherIn20: "contrast 20, irrigation 50" });
    expect(over).toHaveLength(1);
    expect(rows(over.map(asPasted).join("\n"))).toEqual([pasted[1]]);
  });

  it("goes to the first row in which nothing stands", () => {
    expect(firstFreeRow({ when1: "8", drained2: "4", flush4: "1" })).toBe(3);
    const full = Object.fromEntries(Array.from({ length: 20 }, (_, index) => [`when${index + 1}`, "8"]));
    expect(firstFreeRow(full)).toBe(21);
    expect(fillDiary(full, rows("40\n35"), { row: 21, cell: "drained" }).over).toHaveLength(2);
  });
});
