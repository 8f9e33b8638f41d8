import { expect, it } from "vitest";
import { whyInShort } from "#shared/words/why-in-short.ts";

const failed = { code: "trial-failed", args: {}, eventId: null } as const;
const one = "The clamp trial failed: decide what follows.";

it.each([
  [0, ""],
  [1, one],
  [2, `${one} ${one}`],
  [5, `${one} ${one} And 3 more.`],
])("of %i reasons", (count, said) => {
  expect(whyInShort(Array.from({ length: count }, () => failed))).toBe(said);
});
