import type { ReactNode } from "react";
import { MIDDLE, type Scale } from "#app/bore/scale.ts";
import type { Inner } from "#shared/fit/profile-inner.ts";
import type { Cut, Segment } from "#shared/fit/profile-segments.ts";
import styles from "./bore.module.css";

/** One edge of a wall: along, and off the middle. */
type Edge = { readonly at: number; readonly off: number };

const half = (scale: Scale, width: number): number => scale.across(width) / 2;

/** How much of an unknown wall is drawn solid before it fades into hatching. */
const SOLID = 0.16;

/** The open way that the wall leaves for certain; an unknown one leaves none. */
function wayIn({ outer, inner }: Cut): number {
  switch (inner.known) {
    case "measured":
      return inner.least;
    case "by label":
      return inner.width;
    case "closed":
      return 0;
    case "unknown":
      return outer.width * (1 - SOLID);
  }
}

const points = (edges: readonly Edge[], side: 1 | -1): string =>
  edges.map(({ at, off }) => `${at},${MIDDLE + side * off}`).join(" ");

/** Between an outer and an inner width, from one cut to the next. */
function band(
  segment: Segment,
  scale: Scale,
  widths: (cut: Cut) => readonly [number, number],
): readonly Edge[] {
  const { from, to, start, end } = segment;
  const [outerStart, innerStart] = widths(start);
  const [outerEnd, innerEnd] = widths(end);
  return [
    { at: scale.along(from), off: half(scale, outerStart) },
    { at: scale.along(to), off: half(scale, outerEnd) },
    { at: scale.along(to), off: half(scale, innerEnd) },
    { at: scale.along(from), off: half(scale, innerStart) },
  ];
}

const most = (inner: Inner, least: number): number => (inner.known === "measured" ? inner.most : least);

const isUnknown = ({ start, end }: Segment): boolean =>
  start.inner.known === "unknown" || end.inner.known === "unknown";

const hasTolerance = ({ start, end }: Segment): boolean =>
  [start, end].some(({ inner }) => inner.known === "measured" && inner.most > inner.least);

type WallProps = { readonly segment: Segment; readonly scale: Scale; readonly hatch: string };

/**
 * The wall of one part, over and under the way through it. An unknown inside fades into hatching that closes the way; a
 * tolerance leaves a strip that may be wall or way; an outside that nobody recorded is dashed.
 */
export function Wall({ segment, scale, hatch }: WallProps): ReactNode {
  const unknown = isUnknown(segment);
  const solid = band(segment, scale, (cut) => [cut.outer.width, wayIn(cut)]);
  const maybe = band(segment, scale, (cut) => [most(cut.inner, wayIn(cut)), wayIn(cut)]);
  const faded = band(segment, scale, (cut) => [wayIn(cut), 0]);
  const labeled = segment.start.inner.known === "by label";
  const drawn = segment.start.outer.recorded ? styles.wall : styles.guessed;
  return (
    <g>
      {([-1, 1] as const).map((side) => (
        <g key={side}>
          {unknown && <polygon className={styles.unknown} fill={hatch} points={points(faded, side)} />}
          <polygon className={drawn} points={points(solid, side)} />
          {hasTolerance(segment) && <polygon className={styles.maybe} points={points(maybe, side)} />}
          {labeled && <polyline className={styles.byLabel} points={points(solid.slice(2), side)} />}
        </g>
      ))}
    </g>
  );
}
