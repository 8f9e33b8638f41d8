import { describe, expect, it } from "vitest";
import type { Character } from "#shared/tube/vocabulary.ts";
import { newCharacters } from "./expected-fluid.ts";

const ofBlood: readonly Character[] = ["serosanguineous", "bloody", "clots"];
const newOfBlood = (...expected: Character[]) =>
  newCharacters(expected).filter((character) => ofBlood.includes(character));

describe("what a tube is not expected to drain (common practice, no source)", () => {
  it.each<[readonly Character[], readonly Character[]]>([
    [["urine-like"], ["serosanguineous", "bloody", "clots"]],
    [["serosanguineous"], ["bloody", "clots"]],
    [["bloody"], []],
    [["clots"], []],
    [["purulent", "bloody"], []],
    [["clots", "purulent"], []],
  ])(
    "of blood, where %j is expected: %j; a lighter one is expected with a heavier, clots with blood",
    (expected, news) => {
      expect(newOfBlood(...expected)).toEqual(news);
    },
  );

  it("of other fluids each that was not named, but none that is thinner, clear or settles in any", () => {
    expect(newCharacters(["bilious"])).toEqual([
      "serosanguineous",
      "bloody",
      "purulent",
      "feculent",
      "chylous",
      "urine-like",
      "food",
      "clots",
    ]);
  });

  it("is nothing where nobody said what is expected", () => {
    expect(newCharacters([])).toEqual([]);
  });
});
