import { median } from "#shared/output/median.ts";
import { kendall } from "#shared/output/trend/kendall.ts";
import { LEAST_DAYS, LEVEL, type Level } from "#shared/output/trend/limits.ts";
import { nthSmallest } from "#shared/output/trend/nth-smallest.ts";

export type Point = { readonly x: number; readonly y: number };

/** From the `rank`-th smallest slope to the `rank`-th largest. `none`: no two slopes lie far enough apart for this level. */
export type SlopeInterval =
  | { readonly kind: "told"; readonly low: number; readonly high: number; readonly rank: number }
  | { readonly kind: "none"; readonly because: "too-few-days" };

/** The median line: `slope` in y per x, through `anchor`, the medians of x and of y. */
export type MedianLine = {
  readonly kind: "told";
  readonly slope: number;
  readonly anchor: Point;
  readonly interval: SlopeInterval;
  readonly level: Level;
  /** How many slopes between two points it is the median of, and the variance behind the rank. */
  readonly slopes: number;
  readonly variance: number;
};

export type TheilSen = MedianLine | { readonly kind: "none"; readonly because: "too-few-days" };

/** Every slope between two points. No two points have the same x. */
function slopesOf(points: readonly Point[]): Float64Array {
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let at = 0;
  for (const [index, a] of points.entries())
    for (let later = index + 1; later < points.length; later += 1, at += 1) {
      const b = points[later] ?? a;
      slopes[at] = (b.y - a.y) / (b.x - a.x);
    }
  return slopes;
}

function medianOf(slopes: Float64Array): number {
  const low = nthSmallest(slopes, Math.ceil(slopes.length / 2) - 1) ?? 0;
  const high = nthSmallest(slopes, Math.floor(slopes.length / 2)) ?? 0;
  return (low + high) / 2;
}

/**
 * The rank is (N - z sqrt(Var S)) / 2, rounded (Sen 1968; Gilbert 1987, chapter 16). Rounded it holds the level of 95 % by S's exact
 * distribution, too, from five days to ten.
 */
function intervalOf(slopes: Float64Array, variance: number, { z }: Level): SlopeInterval {
  const rank = Math.round((slopes.length - z * Math.sqrt(variance)) / 2);
  const low = nthSmallest(slopes, rank - 1);
  const high = nthSmallest(slopes, slopes.length - rank);
  return low === undefined || high === undefined
    ? { kind: "none", because: "too-few-days" }
    : { kind: "told", low, high, rank };
}

/**
 * The median of the slopes between any two points (Theil 1950, Sen 1968): a few wild days do not turn it. The line goes through
 * the medians of x and y, so that the interval of the slope tilts it about one point that can be named; the median of the
 * residuals would give another height for every slope.
 */
export function theilSen(points: readonly Point[], level: Level = LEVEL): TheilSen {
  if (points.length < LEAST_DAYS) return { kind: "none", because: "too-few-days" };
  const inOrder = points.toSorted((a, b) => a.x - b.x);
  const slopes = slopesOf(inOrder);
  const { variance } = kendall(inOrder.map(({ y }) => y));
  return {
    kind: "told",
    slope: medianOf(slopes),
    anchor: { x: median(points.map(({ x }) => x)) ?? 0, y: median(points.map(({ y }) => y)) ?? 0 },
    interval: intervalOf(slopes, variance, level),
    level,
    slopes: slopes.length,
    variance,
  };
}
