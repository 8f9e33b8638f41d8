import type { Refusal } from "#shared/errors/refusal.ts";
import { isIn, type Leaf, placesOf } from "#shared/protocol/rows/leaf.ts";
import { isBlank, leafMissing } from "#shared/protocol/rows/read-leaf.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/** The places of lists that are left wholly blank, which is how one is taken out; "" among them where the whole row is. */
export function blankPlaces(leaves: readonly Leaf[], texts: Texts): ReadonlySet<string> {
  const places = new Set(["", ...leaves.flatMap(({ path }) => placesOf(path))]);
  for (const { path } of leaves.filter((leaf) => !isBlank(texts[leaf.path])))
    for (const place of [...places]) if (isIn(path, place)) places.delete(place);
  return places;
}

export const isInBlank = (path: string, blank: ReadonlySet<string>): boolean =>
  [...blank].some((place) => isIn(path, place));

/** What has to be filled and is blank, in a row and in the places of it that are not left wholly blank. */
export function missingLeaves(leaves: readonly Leaf[], texts: Texts): readonly Refusal[] {
  const blank = new Set([...blankPlaces(leaves, texts)].filter((place) => place !== ""));
  return leaves
    .filter(({ path, mayBeBlank }) => !mayBeBlank && isBlank(texts[path]) && !isInBlank(path, blank))
    .flatMap((leaf) => {
      const missing = leafMissing(leaf);
      return missing.ok ? [] : [{ ...missing.refusal, field: leaf.path }];
    });
}
