import type { StateConcern, TubeInside } from "#shared/fit/inside.ts";
import { type Passage, type PassageRows, type WirePassage, wireOf } from "#shared/fit/passage.ts";
import { wirePassage } from "#shared/fit/wire-passage.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/** What a planned exchange says of its wire and of the tube to come, as far as it is typed yet. */
export type WirePlan = {
  readonly wire: Fact<Length>;
  readonly takes: Fact<Length>;
  readonly size: Fact<Length>;
};

/** What is recorded of the tube in place; `pastLatest`: its latest date has passed today. */
export type TubeInPlace = {
  readonly inside: TubeInside;
  readonly size: Fact<Length>;
  readonly concerns: readonly StateConcern[];
  readonly pastLatest: boolean;
};

/** One wire through one of the two tubes: the facts, the tube's outside, and both lines of the answer. */
export type PlannedPassage = {
  readonly passage: Passage;
  readonly outside: Fact<Length>;
  readonly answer: WirePassage;
};

/** The wire goes out through the tube in place and carries the tube to come: both must let it pass, and both are shown. */
export type PlannedPassages = { readonly inPlace: PlannedPassage; readonly toCome: PlannedPassage };

/** Of a tube in its package the label is what is known: its insides are nobody's yet, and nobody has looked at its state. */
const inPackage = (takes: Fact<Length>): TubeInside => ({ takes, bores: [], endHole: unknownFact });

const concernsOf = ({ concerns, pastLatest }: TubeInPlace): readonly StateConcern[] =>
  pastLatest ? [...concerns, "past latest date"] : concerns;

export function plannedPassages(plan: WirePlan, tube: TubeInPlace, rows: PassageRows): PlannedPassages {
  const { wire, takes, size } = plan;
  const through = { goes: wireOf(wire), inside: tube.inside, rows };
  const over = { goes: wireOf(wire), inside: inPackage(takes), rows };
  return {
    inPlace: { passage: through, outside: tube.size, answer: wirePassage(through, concernsOf(tube)) },
    toCome: { passage: over, outside: size, answer: wirePassage(over, undefined) },
  };
}
