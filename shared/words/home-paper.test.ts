import { describe, expect, it } from "vitest";
import { statuses } from "#shared/tube/state.ts";
import { listNotes, noPaperWords, speaksOfThisAge } from "./home-paper.ts";

describe("a paper to take home", () => {
  it.each([
    ["in", null],
    // Told and not seen: it may still be in.
    ["removal not confirmed", null],
    ["out, undecided", "This tube is out: there is nothing to print for it until somebody has decided."],
    [
      "fragment retained",
      "This tube is out and a piece of it was left inside: there is nothing to print for it.",
    ],
    ["ended", "The record of this tube has ended: there is nothing to print for it."],
  ] as const)("of a tube that is %j", (status, says) => {
    expect(noPaperWords(status)).toBe(says);
  });

  it("speaks of every status", () => {
    expect(statuses).toHaveLength(5);
  });
});

describe("what is said of the clinic's list", () => {
  const approved = { by: "anyone", on: "2026-11-02" };

  it("is nothing where it is approved and the age is known", () => {
    expect(listNotes({ approved, found: "row", birthKnown: true })).toEqual([]);
  });

  it("is that nobody approved it, and that the age is not known", () => {
    expect(listNotes({ approved: null, found: "no row", birthKnown: false })).toEqual([
      "Nobody in the clinic has approved this list yet.",
      "It is for adults, and the birth date is not known.",
    ]);
  });

  it("is that it has no line for a child, approved or not", () => {
    const says = ["The clinic's list is for adults and has no line for this age: ask the clinic."];
    for (const by of [approved, null])
      expect(listNotes({ approved: by, found: "no example for a child", birthKnown: true })).toEqual(says);
    expect(speaksOfThisAge({ found: "no example for a child" })).toBe(false);
    expect(speaksOfThisAge({ found: "no row" })).toBe(true);
  });
});
