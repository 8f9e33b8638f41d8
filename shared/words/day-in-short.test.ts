import { expect, it } from "vitest";
import { netDayOf } from "#tests/factories/net-day.ts";
import { dayInShort } from "./day-in-short.ts";

it.each([
  ["complete", {}],
  ["complete, leaks round it, told, not seen", { remarks: ["leak-round-tube", "reported"] }],
  ["no entry, not over", { complete: false, because: ["no-reading", "day-in-progress"] }],
  ["flush not recorded, a gap", { complete: false, because: ["flush-not-recorded", "gap"] }],
] as const)("a day is %s", (words, overrides) => {
  expect(dayInShort(netDayOf("2026-11-14", 8, overrides))).toBe(words);
});
