import { type Place, places } from "#shared/fit/inside.ts";
import type { Length } from "#shared/size/length.ts";

/** An outer width in units of Length. Not recorded: drawn in proportion only, and shown as such. */
export type Outside = { readonly width: number; readonly recorded: boolean };

/** How far an outside that nobody records stands off what is drawn in it: for the eye only. */
const WALL = 1.3;
const HUB = 1.6;
const TIP = 0.6;

type Drawn = {
  readonly outside: Length | undefined;
  readonly wire: number;
  /** The widest inside that is drawn at a place; 0 where none is known. */
  readonly widestAt: (place: Place) => number;
};

/**
 * The outer widths of a drawing. Only the shaft's is ever recorded (French is the outside of the shaft); hub and tip are drawn in
 * proportion to it. `across` holds everything, the wire included.
 */
export function outsides({ outside, wire, widestAt }: Drawn) {
  const widest = Math.max(wire, ...places.map(widestAt));
  const shaft = outside ?? Math.max(1, widest * WALL);
  const at = (place: Place): Outside => {
    if (place === "shaft") return { width: shaft, recorded: outside !== undefined };
    const share = place === "end hole" ? TIP : HUB;
    return { width: Math.max(shaft * share, widestAt(place) * WALL), recorded: false };
  };
  const across = Math.max(widest * WALL, ...places.map((place) => at(place).width));
  return { at, across };
}
