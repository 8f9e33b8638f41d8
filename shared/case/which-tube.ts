import { mistake, type Telling, told } from "#shared/case/telling.ts";
import type { TubeState } from "#shared/tube/state.ts";

const wordsOf = (tubes: readonly TubeState[]): string => tubes.map(({ id }) => id).join(", ") || "none yet";

/** The tube that a case means by a word, which is its id there; without a word the only one. */
export function whichTube(tubes: readonly TubeState[], word: string | undefined): Telling<TubeState> {
  const found = word === undefined && tubes.length === 1 ? tubes[0] : tubes.find(({ id }) => id === word);
  if (found !== undefined) return told(found);
  return word === undefined
    ? mistake("case-tube-unnamed", { tubes: wordsOf(tubes) })
    : mistake("case-tube-unknown", { tube: word, tubes: wordsOf(tubes) });
}
