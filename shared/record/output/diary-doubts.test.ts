import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { diaryDoubtsByCell } from "#shared/words/reading-doubts.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { noOutputYet } from "#tests/factories/reading-beside.ts";
import { diaryDoubts } from "./diary-doubts.ts";

/** Fri 20 Nov 2026, noon in London; nothing is logged yet of a drain that is in since 20 Aug. */
const context = formContext({
  today: day("2026-11-20"),
  now: instant(Date.parse("2026-11-20T12:00Z")),
  output: noOutputYet,
});
const asked = (texts: Texts, output = noOutputYet) =>
  Object.fromEntries(
    Object.entries(diaryDoubts(texts, { ...context, output })).map(([cell, doubts]) => [
      cell,
      doubts?.map(({ code }) => code),
    ]),
  );

const plain: Texts = {
  from: "13 nov 22:00",
  when1: "14 nov 8:00",
  drained1: "40",
  when2: "20:00",
  drained2: "35",
  when3: "8:00",
  drained3: "30",
};

describe("what is asked of a diary", () => {
  it("is nothing of one that is plain", () => {
    expect(asked(plain)).toEqual({});
  });

  it("1000 typed for 100 is asked beside the other rows, where nothing is logged yet (hard case 32)", () => {
    expect(asked({ ...plain, drained2: "1000" })).toEqual({ drained2: ["far-over-median"] });
  });

  it("two rows of the same time, and a row that runs over others, name each other", () => {
    const twice = { ...plain, when2: "14 nov 8:00" };
    expect(asked(twice)).toEqual({ when1: ["overlaps"], when2: ["overlaps"] });
    const day14 = { ...plain, when4: "14 nov", drained4: "75" };
    expect(asked(day14)).toEqual({
      when1: ["overlaps"],
      when2: ["overlaps"],
      when4: ["overlaps", "overlaps"],
    });
  });

  it("what is logged already is asked by row, and the flush of all rows in each", () => {
    const output = {
      ...noOutputYet,
      emptied: [
        {
          from: instant(Date.parse("2026-11-14T10:00Z")),
          to: instant(Date.parse("2026-11-14T20:00Z")),
          aspirate: false,
        },
      ],
    };
    expect(asked({ ...plain, flushEach: "250" }, output)).toEqual({
      flush1: ["flush-over-order"],
      when2: ["overlaps"],
      flush2: ["flush-over-order"],
      flush3: ["flush-over-order"],
    });
  });

  it("a row before the tube is asked; rows that cannot be read yet are passed over", () => {
    expect(asked({ when1: "1 aug 8:00", drained1: "forty", when2: "soon", drained2: "40" })).toEqual({
      when1: ["before-tube"],
    });
  });

  it("is said by cell", () => {
    const said = diaryDoubtsByCell(diaryDoubts({ when1: "1 aug 8:00" }, context), context.zone);
    expect(said).toEqual({
      when1: "The tube is known to lie there since Thu 20 Aug 2026. Is the date right?",
    });
  });

  it("the same question of two other rows is said once", () => {
    const thrice = { when1: "14 nov 8:00", when2: "14 nov 8:00", when3: "14 nov 8:00" };
    const said = diaryDoubtsByCell(diaryDoubts(thrice, context), context.zone);
    expect(said.when1).toBe("Another reading ends Sat 14 Nov 2026, 08:00. Is this really not the same?");
  });

  it("is nothing where nothing is known of the tube's output", () => {
    expect(diaryDoubts(plain, formContext())).toEqual({});
  });
});
