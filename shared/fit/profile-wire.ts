import { weigh } from "#shared/fit/compare-inside.ts";
import type { BySize, Comparison } from "#shared/fit/passage.ts";
import type { Segment } from "#shared/fit/profile-segments.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";

/** The wire comes from the hub and reaches `to`. What it does there is `ends`. */
export type WireBar = {
  readonly width: number;
  readonly to: number;
  readonly ends: "through" | "stopped" | "in doubt" | "unknown";
};

/** Where a comparison is drawn: a closed tip at the far end, a label, which names no place, where the wire goes in. */
export function positionOf(comparison: Comparison, segments: readonly Segment[]): number {
  switch (comparison.basis) {
    case "closed end hole":
      return 1;
    case "label":
      return 0;
    case "bore":
      return segments.find((segment) => segment.part === comparison.place)?.from ?? 0;
  }
}

/** A wire thicker than the end hole but not than the shaft stops on the way down the taper. */
function stopInTaper(wire: number, segments: readonly Segment[]): number | undefined {
  const taper = segments.find((segment) => segment.part === "taper");
  if (taper?.start.inner.known !== "measured" || taper.end.inner.known !== "measured") return undefined;
  const shaft = taper.start.inner.most;
  const tip = taper.end.inner.most;
  if (wire <= tip || wire > shaft) return undefined;
  return taper.from + ((shaft - wire) / (shaft - tip)) * (taper.to - taper.from);
}

/** Null when the wire's size is unknown. It stops at the first place that stops it, which need not be the narrowest. */
export function wireBar(wire: Fact<Length>, bySize: BySize, segments: readonly Segment[]): WireBar | null {
  const width = known(wire);
  if (width === undefined) return null;
  const first = (outcome: "doubt" | "does not pass") => {
    const those = bySize.compared.filter((each) => weigh(each, wire) === outcome);
    // A label names no place: it is drawn only where no place is known to do the same.
    const placed = those.filter(({ basis }) => basis !== "label");
    return Math.min(...(placed.length > 0 ? placed : those).map((each) => positionOf(each, segments)));
  };
  switch (bySize.verdict) {
    case "passes":
      return { width, to: 1, ends: "through" };
    case "doubt":
      return { width, to: first("doubt"), ends: "in doubt" };
    case "does not pass": {
      const to = first("does not pass");
      const atEndHole = to === segments.at(-1)?.from;
      return { width, to: (atEndHole ? stopInTaper(width, segments) : to) ?? to, ends: "stopped" };
    }
    case "cannot tell": {
      const unknown = segments.find((segment) => segment.start.inner.known === "unknown");
      return { width, to: unknown?.from ?? 0, ends: "unknown" };
    }
  }
}
