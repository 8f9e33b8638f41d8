import { coaxialSorts } from "#shared/fit/coaxial.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";

/** What nobody knows stands last. */
const figure = (fact: Fact<Length>): number => known(fact) ?? Number.MAX_SAFE_INTEGER;

/** Types as a shelf shows them: by sort, wires first, then by size, by length and by name. */
export const bySortAndSize = <T extends NewShelfType>(types: readonly T[]): readonly T[] =>
  types.toSorted(
    (a, b) =>
      coaxialSorts.indexOf(a.sort) - coaxialSorts.indexOf(b.sort) ||
      figure(a.outside) - figure(b.outside) ||
      figure(a.length) - figure(b.length) ||
      (a.name < b.name ? -1 : a.name > b.name ? 1 : 0),
  );
