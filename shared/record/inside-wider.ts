import type { Refusal } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { Bore } from "#shared/fit/inside.ts";
import { printOutside } from "#shared/shelf/outside.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { type Fact, known, unknownFact } from "#shared/tube/certainty.ts";

/** What is typed of one thing; what is left out says nothing. */
export type Around = {
  readonly sort: CoaxialSort;
  readonly outside?: Fact<Length> | undefined;
  readonly takes?: Fact<Length> | undefined;
  readonly takesDevice?: Fact<Length> | undefined;
  readonly bores?: readonly Bore[] | undefined;
};

/** Where a wall stands round the inside. A hub, a valve or a stopcock is wider than what it sits on. */
const walled: readonly Bore["place"][] = ["shaft", "end hole"];

/** `inside-wider-than-outside`, once a field: an inside that is wider than its outside, so that one of the two is wrong. */
export function insideWider({
  sort,
  outside = unknownFact,
  takes,
  takesDevice,
  bores = [],
}: Around): Refusal[] {
  const around = known(outside);
  if (around === undefined) return [];
  const insides = [
    { field: "takes", place: "takes a wire of", fact: takes, unit: "in" as const },
    { field: "takesDevice", place: "takes a device of", fact: takesDevice, unit: "F" as const },
    ...bores
      .filter(({ place }) => walled.includes(place))
      .map(({ place, inside }) => ({ field: "bores", place, fact: inside, unit: "mm" as const })),
  ];
  return insides.flatMap(({ field, place, fact = unknownFact, unit }) => {
    const inside = known(fact);
    if (inside === undefined || inside <= around) return [];
    const args = { place, inside: printLength(inside, unit), outside: printOutside(around, sort) };
    return [{ code: "inside-wider-than-outside", field, args }];
  });
}
