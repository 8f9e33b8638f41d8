import { describe, expect, it } from "vitest";
import { type Figures, figuresOf } from "#shared/call/figures.ts";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { figureLines, shareWords } from "./figures.ts";

const nobody = figuresOf([], { from: day("2026-08-01"), to: day("2026-08-30") }, zone("UTC"));
const of = (figures: Partial<Figures>) => ({ ...nobody, undated: 1, pastLatest: 2, ...figures });
const shareOf = (word: string, figures: Partial<Figures>): string | null | undefined => {
  const line = figureLines(of(figures)).find((one) => one.word === word);
  return line === undefined ? undefined : shareWords(line);
};

describe("a figure as a part of all", () => {
  it("losses stand beside all of whom they are a part", () => {
    expect(shareOf("Without a date", { open: 8 })).toBe("12.5 % of 8");
    expect(shareOf("Past latest", { open: 8 })).toBe("25 % of 8");
    expect(shareOf("Tried now and not reached yet", { trying: 3, patients: 340 })).toBe("0.9 % of 340");
    const reached = { ...nobody.reached, "first attempt": 2, "not reached": 1 };
    expect(shareOf("Not reached: a physician decided", { reached })).toBe("33.3 % of 3");
    expect(shareOf("Died with the tube", { ended: { ...nobody.ended, died: 1, removed: 3 } })).toBe(
      "25 % of 4",
    );
  });

  it("is none where there is nothing that it is a part of", () => {
    expect(shareOf("Removed", {})).toBeNull();
    expect(shareOf("Patients with an open record", { patients: 340 })).toBeNull();
    expect(shareOf("Told to handed, the middle one", {})).toBeNull();
  });
});
