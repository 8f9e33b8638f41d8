import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { TypedThing } from "#shared/record/shelf/read-chain.ts";

const named = (sort: CoaxialSort, name: string): TypedThing => ({ sort, texts: { name } });
const plain = (...sorts: readonly CoaxialSort[]): readonly TypedThing[] =>
  sorts.map((sort) => ({ sort, texts: {} }));

/** Chains that the trade meets, the innermost first. Sizes are left to whoever asks: none is typical enough to stand in for theirs. */
export const startingPoints: readonly { readonly word: string; readonly things: readonly TypedThing[] }[] = [
  { word: "Wire in a tube", things: plain("wire", "tube") },
  { word: "Wire in a needle", things: plain("wire", "needle") },
  {
    word: "Wire in a stiffener in a tube in a sheath",
    things: [...plain("wire", "stiffener"), named("tube", "tube to come"), ...plain("sheath")],
  },
  {
    word: "Jejunal extension in a gastrostomy",
    things: [named("extension", "jejunal extension"), named("tube", "gastrostomy")],
  },
  { word: "Sheath over a cut tube", things: [named("tube", "cut tube"), ...plain("sheath")] },
];
