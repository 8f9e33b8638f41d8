import { type Character, characters } from "#shared/tube/vocabulary.ts";

/** Of no other organ: thinner, clearer, or what settles in any fluid. */
const neverNew: readonly Character[] = ["serous", "clear", "debris"];
/** Blood from the lightest on: where one is expected, a lighter one is, and clots where blood is. */
const blood: readonly Character[] = ["serosanguineous", "bloody", "clots"];

function isExpected(character: Character, expected: readonly Character[]): boolean {
  if (neverNew.includes(character) || expected.includes(character)) return true;
  if (!blood.includes(character)) return false;
  const heaviest = Math.max(...expected.map((one) => blood.indexOf(one)));
  return blood.indexOf(character) < heaviest || expected.includes("bloody");
}

/** What a tube is not expected to drain. Where nobody said what is, nothing is new. */
export const newCharacters = (expected: readonly Character[]): readonly Character[] =>
  expected.length === 0 ? [] : characters.filter((character) => !isExpected(character, expected));
