import { type Coaxial, goesAs, isSolid } from "#shared/fit/coaxial.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { BySize, Passage, PassageRows } from "#shared/fit/passage.ts";
import { type Reach, reach } from "#shared/fit/reach.ts";

/** One thing in the next. */
export type Pair = {
  readonly inner: Coaxial;
  readonly outer: Coaxial;
  readonly passage: Passage;
  readonly bySize: BySize;
  readonly byLength: Reach;
};

/** `first` is the pair that decides: of the worst, the innermost. Null while there is no pair. */
export type Chain = {
  readonly pairs: readonly Pair[];
  readonly bySize: { readonly verdict: BySize["verdict"]; readonly first: Pair } | null;
  readonly byLength: { readonly verdict: Reach["verdict"]; readonly first: Pair } | null;
};

const worstSizeFirst: readonly BySize["verdict"][] = ["does not pass", "cannot tell", "doubt", "passes"];
const worstReachFirst: readonly Reach["verdict"][] = ["too short", "cannot tell", "doubt", "long enough"];

/** The innermost of the worst; a chain is as good as its worst pair. */
function worst<V>(pairs: readonly Pair[], order: readonly V[], of: (pair: Pair) => V) {
  for (const verdict of order) {
    const first = pairs.find((pair) => of(pair) === verdict);
    if (first !== undefined) return { verdict, first };
  }
  return null;
}

function pairOf(inner: Coaxial, outer: Coaxial, rows: PassageRows): Pair {
  const passage = { goes: goesAs(inner), inside: outer.inside, rows };
  return {
    inner,
    outer,
    passage,
    bySize: passageBySize(passage),
    byLength: reach(inner.length, outer.length),
  };
}

/**
 * Things that lie one in another, the innermost first: each is held against the next, by size and by length, in two lines that do not
 * hide one another. Throws RangeError where a wire is not the innermost: it is solid, and nothing goes through it.
 */
export function chainOf(things: readonly Coaxial[], rows: PassageRows): Chain {
  const around = things.slice(1);
  if (around.some(isSolid)) throw new RangeError("a wire has no inside");
  const pairs = around.flatMap((outer, index) => {
    const inner = things[index];
    return inner === undefined ? [] : [pairOf(inner, outer, rows)];
  });
  return {
    pairs,
    bySize: worst(pairs, worstSizeFirst, ({ bySize }) => bySize.verdict),
    byLength: worst(pairs, worstReachFirst, ({ byLength }) => byLength.verdict),
  };
}
