import { missingPlaces } from "#shared/fit/missing.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { FindOut } from "#shared/tube/vocabulary.ts";

const isKnown = ({ certainty }: Fact<unknown>): boolean => certainty !== "unknown";

/** Told or measured: what wire it takes, or every inside that a wire meets, the end hole too. One inside alone, or French, tells neither. */
export const insideIsKnown = ({ inside }: TubeState): boolean => missingPlaces("wire", inside).length === 0;

/** Whether the record knows each thing that can be asked for after a transfer. Told is known, until it is seen. */
const found = {
  side: ({ side }) => isKnown(side),
  size: ({ size }) => isKnown(size),
  "what wire it takes": insideIsKnown,
  "end hole": ({ inside }) => isKnown(inside.endHole),
  "full length": ({ fullLength }) => isKnown(fullLength),
  "external length": ({ externalLength }) => isKnown(externalLength),
  "what holds it": ({ retention }) => isKnown(retention),
  "water in the balloon": ({ balloonMl }) => isKnown(balloonMl),
  fixation: ({ fixation }) => isKnown(fixation),
  "flush order": ({ flushOrder }) => isKnown(flushOrder),
  "day of the puncture": ({ tract }) => tract.since.precision === "day",
  "position of the tip": ({ tipConfirmed }) => tipConfirmed !== null && isKnown(tipConfirmed.inPlace),
} as const satisfies Record<FindOut, (tube: TubeState) => boolean>;

/** Who is asked and which tube is ordered hang on these two; a tube in no paired organ has no side to find. */
const ofEveryTube = ({ kind }: TubeState): readonly FindOut[] =>
  kindOf(kind).sided ? ["side", "size"] : ["size"];

/** What a transfer left to be found out and is not known yet. */
export const stillToFindOut = (tube: TubeState): readonly FindOut[] =>
  (tube.toFindOut?.what ?? []).filter((what) => !found[what](tube));

/** What every record must say of its tube, this one does not, and no other step asks for: the size of what was done elsewhere is confirmed there. */
export function gapsOf(tube: TubeState): readonly FindOut[] {
  const asked = [...(tube.toFindOut?.what ?? []), ...(tube.unverified === null ? [] : ["size"])];
  return ofEveryTube(tube).filter((what) => !asked.includes(what) && !found[what](tube));
}
