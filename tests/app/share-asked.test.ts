import { expect, it } from "vitest";
import { shareAsked } from "#app/calls/share-asked.ts";

it.each([
  [
    { share: "2", of: "3" },
    { share: 2, of: 3 },
  ],
  [{}, { share: 1, of: 1 }],
  [
    { share: "3", of: "2" },
    { share: 1, of: 1 },
  ],
  [
    { share: "0", of: "2" },
    { share: 1, of: 1 },
  ],
  [
    { share: "1", of: "99" },
    { share: 1, of: 1 },
  ],
  [
    { share: ["1", "2"], of: "2" },
    { share: 1, of: 1 },
  ],
])("%j asks for %j: a word that is none asks for all", (query, asked) =>
  expect(shareAsked(query)).toEqual(asked),
);
