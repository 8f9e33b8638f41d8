import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { answerStates } from "#shared/visit/prerequisites.ts";
import { answerWords, leadWords, settleByWords, thingLabels } from "./prerequisites.ts";

describe("prerequisites in words", () => {
  it("have a label for each thing and a word for each answer", () => {
    expect(Object.keys(thingLabels)).toEqual(prerequisiteThings);
    expect(Object.keys(answerWords)).toEqual(answerStates);
    expect(new Set(Object.values(thingLabels)).size).toBe(prerequisiteThings.length);
  });

  it.each([
    [
      { settleBy: day("2026-11-13"), workingDaysBefore: 1 },
      "settled by Fri 13 Nov 2026, 1 working day before",
    ],
    [
      { settleBy: day("2026-11-16"), workingDaysBefore: 0 },
      "settled by Mon 16 Nov 2026, the day of the visit",
    ],
    [
      { settleBy: null, workingDaysBefore: 5 },
      "settled by 5 working days before; its date cannot be told yet",
    ],
    [
      { settleBy: null, workingDaysBefore: 0 },
      "settled by the day of the visit; its date cannot be told yet",
    ],
  ])("%j: %s", (said, words) => {
    expect(settleByWords(said)).toBe(words);
  });

  it.each([
    [13, "where it is needed it takes 13 hours before the visit"],
    [1, "where it is needed it takes 1 hour before the visit"],
  ])("a lead of %i", (hours, words) => {
    expect(leadWords(hours)).toBe(words);
  });
});
