import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gross, reading } from "#tests/factories/reading.ts";
import { type ReadingEntry, standingReadings } from "./reading-log.ts";
import { readingEntrySchema } from "./reading-log-schema.ts";

const recorded = (seq: number, id: string): ReadingEntry => ({
  act: "recorded",
  seq,
  reading: reading({ id }),
});
const replaced = (seq: number, id: string, replaces: string): ReadingEntry => ({
  act: "replaced",
  seq,
  replaces,
  reason: "typed 1000 for 100",
  reading: reading({ id, gross: gross(seq) }),
});
const voided = (seq: number, id: string, replaces: string): ReadingEntry => ({
  act: "voided",
  seq,
  id,
  replaces,
  reason: "wrong tube",
});
const standing = (...entries: ReadingEntry[]) => standingReadings(entries).map(({ id }) => id);

describe("the log of readings", () => {
  it.each([
    ["nothing amended", [recorded(1, "a"), recorded(2, "b")], ["a", "b"]],
    ["replaced", [recorded(1, "a"), replaced(2, "b", "a")], ["b"]],
    [
      "replaced twice, the second naming the first entry",
      [recorded(1, "a"), replaced(2, "b", "a"), replaced(3, "c", "a")],
      ["c"],
    ],
    ["the replacement replaced", [recorded(1, "a"), replaced(2, "b", "a"), replaced(3, "c", "b")], ["c"]],
    ["voided", [recorded(1, "a"), voided(2, "v", "a")], []],
    ["the replacement undone", [recorded(1, "a"), replaced(2, "b", "a"), voided(3, "v", "b")], ["a"]],
    ["the void undone", [recorded(1, "a"), voided(2, "v", "a"), voided(3, "w", "v")], ["a"]],
    ["an amendment of nothing", [recorded(1, "a"), voided(2, "v", "x"), replaced(3, "b", "y")], ["a"]],
  ])("%s", (_what, entries, ids) => {
    expect(standing(...entries)).toEqual(ids);
  });

  it("does not depend on the order in which it is read", () => {
    const entries = [
      recorded(1, "a"),
      replaced(2, "b", "a"),
      replaced(3, "c", "a"),
      recorded(4, "d"),
      voided(5, "v", "d"),
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
        expect(standing(...shuffled)).toEqual(["c"]);
      }),
    );
  });

  it("each amendment needs a reason", () => {
    expect(readingEntrySchema.safeParse(voided(2, "v", "a")).success).toBe(true);
    expect(readingEntrySchema.safeParse({ ...voided(2, "v", "a"), reason: "" }).success).toBe(false);
    expect(readingEntrySchema.safeParse({ ...replaced(2, "b", "a"), reason: undefined }).success).toBe(false);
  });
});
