import type { Place } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { BySize, Passage } from "#shared/fit/passage.ts";
import { innerAt, widestOf } from "#shared/fit/profile-inner.ts";
import { outsides } from "#shared/fit/profile-outsides.ts";
import { type Cut, type Segment, segmentsOf } from "#shared/fit/profile-segments.ts";
import { positionOf, type WireBar, wireBar } from "#shared/fit/profile-wire.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";

/** The deciding place: `at` is null for a label, which names no place. The ring is the cut there, the wire over it. */
export type Deciding = {
  readonly place: Place | "whole path";
  readonly at: number | null;
  readonly ring: Cut & { readonly wire: number };
};

/** `across`: the width that fills the drawing; every other width is drawn in proportion to it. */
export type BoreProfile = {
  readonly across: number;
  readonly segments: readonly Segment[];
  readonly wire: WireBar | null;
  readonly deciding: Deciding | null;
  readonly bySize: BySize;
};

function decidingOf(
  bySize: BySize,
  segments: readonly Segment[],
  cutAt: (place: Place) => Cut,
): Deciding | null {
  if (bySize.verdict === "cannot tell") return null;
  const { decides, outside: wire } = bySize;
  switch (decides.basis) {
    case "label": {
      const inner = { known: "by label", width: decides.limits.most, certainty: decides.certainty } as const;
      return { place: "whole path", at: null, ring: { outer: cutAt("shaft").outer, inner, wire } };
    }
    case "bore": {
      const { place } = decides;
      return { place, at: positionOf(decides, segments), ring: { ...cutAt(place), wire } };
    }
    case "closed end hole":
      return {
        place: "end hole",
        at: positionOf(decides, segments),
        ring: { ...cutAt("end hole"), wire },
      };
  }
}

/**
 * The geometry of one passage seen from the side: widths in units of Length, to scale across; positions from 0 to 1, not to scale
 * along. Nothing is drawn here. `outside` is the tube's outer size and never becomes an inside.
 */
export function boreProfile(passage: Passage, outside: Fact<Length>): BoreProfile {
  const bySize = passageBySize(passage);
  const outer = outsides({
    outside: known(outside),
    wire: known(passage.goes.outside) ?? 0,
    widestAt: (place) => widestOf(innerAt(place, passage)),
  });
  const cutAt = (place: Place): Cut => ({ outer: outer.at(place), inner: innerAt(place, passage) });
  const segments = segmentsOf(passage.inside, cutAt);
  return {
    across: outer.across,
    segments,
    wire: wireBar(passage.goes.outside, bySize, segments),
    deciding: decidingOf(bySize, segments, cutAt),
    bySize,
  };
}
