import { type Place, places, type TubeInside } from "#shared/fit/inside.ts";
import type { Inner } from "#shared/fit/profile-inner.ts";
import type { Outside } from "#shared/fit/profile-outsides.ts";

export type Part = Place | "taper";

/** A cut across the tube. */
export type Cut = { readonly outer: Outside; readonly inner: Inner };

/** `from` and `to` run from 0 at the hub's open end to 1 at the tip; lengths are not to scale. */
export type Segment = {
  readonly part: Part;
  readonly from: number;
  readonly to: number;
  readonly start: Cut;
  readonly end: Cut;
};

/** How much of the drawing each part takes. */
const shares = { stopcock: 2, hub: 3, valve: 2, shaft: 9, taper: 4, "end hole": 1 } as const satisfies Record<
  Part,
  number
>;

/** Every tube has a hub, a shaft and a tip; a stopcock or a valve is drawn only where one is recorded. */
const isDrawn = (place: Place, inside: TubeInside): boolean =>
  (place !== "stopcock" && place !== "valve") || inside.bores.some((bore) => bore.place === place);

/** The tube cut into parts from the hub to the tip; the taper runs from the shaft's cut to the end hole's. */
export function segmentsOf(inside: TubeInside, cutAt: (place: Place) => Cut): Segment[] {
  const parts = places
    .filter((place) => isDrawn(place, inside))
    .flatMap((place): Part[] => (place === "end hole" ? ["taper", place] : [place]));
  const total = parts.reduce((sum, part) => sum + shares[part], 0);
  let passed = 0;
  return parts.map((part) => {
    const from = passed / total;
    passed += shares[part];
    const [start, end]: [Place, Place] = part === "taper" ? ["shaft", "end hole"] : [part, part];
    return { part, from, to: passed / total, start: cutAt(start), end: cutAt(end) };
  });
}
