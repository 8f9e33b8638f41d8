import type { Place, TubeInside } from "#shared/fit/inside.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";

/** A recorded inside that is wider than the outside round it, and which of the two facts of an inside says so. */
export type WiderInside = {
  readonly by: "takes" | "takesDevice" | "bores";
  readonly place: Place | "label";
  readonly inside: Length;
  readonly outside: Length;
};

/**
 * The first inside that cannot lie in this outside: at the shaft, at the end hole, or what the package says goes through. A hub, a valve and a
 * stopcock are wider than the shaft, of which the outside is told. Null where nothing contradicts.
 */
export function widerInside(outside: Fact<Length>, inside: TubeInside): WiderInside | null {
  const round = known(outside);
  if (round === undefined) return null;
  const along = inside.bores
    .filter(({ place }) => place === "shaft" || place === "end hole")
    .map((bore) => ({ by: "bores", place: bore.place, of: known(bore.inside) }) as const);
  const labels = (["takes", "takesDevice"] as const).map((by) => {
    const label = inside[by];
    return { by, place: "label", of: label === undefined ? undefined : known(label) } as const;
  });
  for (const { by, place, of } of [...labels, ...along])
    if (of !== undefined && of > round) return { by, place, inside: of, outside: round };
  return null;
}
