import type { Fact } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { FindOut } from "#shared/tube/vocabulary.ts";

const isKnown = ({ certainty }: Fact<unknown>): boolean => certainty !== "unknown";

/** Whether the record knows each thing that can be asked for after a transfer. Told is known, until it is seen. */
const found = {
  side: ({ side }) => isKnown(side),
  size: ({ size }) => isKnown(size),
  "what wire it takes": ({ inside }) => isKnown(inside.takes) || inside.bores.length > 0,
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

/** What was to be found out and is not known yet. */
export const stillToFindOut = (tube: TubeState): readonly FindOut[] =>
  (tube.toFindOut?.what ?? []).filter((what) => !found[what](tube));
