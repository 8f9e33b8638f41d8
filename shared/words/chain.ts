import type { Chain, Pair } from "#shared/fit/chain.ts";
import { type Coaxial, type CoaxialSort, goesAs } from "#shared/fit/coaxial.ts";
import type { Reach } from "#shared/fit/reach.ts";
import { printOutside } from "#shared/shelf/outside.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { known } from "#shared/tube/certainty.ts";
import { type Named, sizeLine } from "#shared/words/passage.ts";

/** What a thing is called in a sentence. */
export const sortNouns = {
  wire: "wire",
  needle: "needle",
  stiffener: "stiffener",
  dilator: "dilator",
  tube: "tube",
  sheath: "sheath",
  extension: "extension",
} as const satisfies Record<CoaxialSort, string>;

/** "the tube to come", "the wire"; a name of the clinic's own is quoted behind the noun: `the wire "Standard 0.035, 145 cm"`. */
export function thingWords({ sort, name }: Coaxial): string {
  if (name === "") return `the ${sortNouns[sort]}`;
  if (name.startsWith("the ")) return name;
  return /^\p{Ll}/u.test(name) ? `the ${name}` : `the ${sortNouns[sort]} "${name}"`;
}

/** "the stiffener (5 F)"; its size is left out where nobody knows it. */
function thingWithSize(of: Coaxial): string {
  const outside = known(of.outside);
  return outside === undefined ? thingWords(of) : `${thingWords(of)} (${printOutside(outside, of.sort)})`;
}

/** "the stiffener (5 F) in the tube to come" */
export const pairWords = ({ inner, outer }: Pick<Pair, "inner" | "outer">): string =>
  `${thingWithSize(inner)} in ${thingWords(outer)}`;

/** The two of a pair as the sentences of a passage name them. */
export const namedIn = ({ inner, outer }: Pair): Named => ({
  name: sortNouns[inner.sort],
  as: goesAs(inner).as,
  through: sortNouns[outer.sort],
});

type Lengths = Pick<Pair, "inner" | "outer" | "byLength">;

/** How far the inner one comes, at lengths as they are recorded. */
function comes(of: "long enough" | "too short", by: Length, { inner, outer }: Lengths): string {
  const far = printLength(by, "cm");
  if (of === "too short")
    return `${thingWords(inner)} is ${far} too short to come out of the tip of ${thingWords(outer)}`;
  return by === 0
    ? `${thingWords(inner)} ends level with the tip of ${thingWords(outer)}`
    : `${thingWords(inner)} reaches ${far} out of the tip of ${thingWords(outer)}`;
}

function lengthSays(lengths: Lengths): string {
  const { inner, outer, byLength } = lengths;
  switch (byLength.verdict) {
    case "long enough":
    case "too short":
      return comes(byLength.verdict, byLength.by, lengths);
    case "doubt":
      return `${comes(byLength.of, byLength.by, lengths)}; a length is ${byLength.certainty}, not confirmed`;
    case "cannot tell": {
      const unknown = { inner: thingWords(inner), outer: thingWords(outer) };
      return `length of ${byLength.missing.map((each) => unknown[each]).join(" and of ")} unknown`;
    }
  }
}

const opening = {
  "long enough": "Long enough",
  "too short": "Too short",
  doubt: "Doubt",
  "cannot tell": "Cannot tell",
} as const satisfies Record<Reach["verdict"], string>;

/** By length: "Too short: the wire is 6 cm too short to come out of the tip of the sheath." */
export const reachLine = (lengths: Lengths): string =>
  `${opening[lengths.byLength.verdict]}: ${lengthSays(lengths)}.`;

/** One thing in the next, in two lines that do not hide one another. */
export const pairLines = (pair: Pair) => ({
  bySize: sizeLine(pair.bySize, namedIn(pair)),
  byLength: reachLine(pair),
});

/**
 * The whole chain in two lines: by size and by length, each by the first that stops, named: "Does not pass: the stiffener (5 F) in the
 * tube to come: at the end hole ...". Null while there is no pair.
 */
export function chainLines(chain: Chain) {
  const { bySize, byLength } = chain;
  if (bySize === null || byLength === null) return null;
  return {
    bySize: sizeLine(bySize.first.bySize, namedIn(bySize.first), pairWords(bySize.first)),
    byLength: reachLine(byLength.first),
  };
}
