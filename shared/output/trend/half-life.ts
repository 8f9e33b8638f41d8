import type { CountableDay } from "#shared/output/trend/countable-days.ts";
import { LEAST_FOR_SHAPE } from "#shared/output/trend/limits.ts";
import { type MedianLine, theilSen } from "#shared/output/trend/theil-sen.ts";

export const noHalfLifeReasons = [
  "too-few-days",
  "not-every-day-over-zero",
  "interval-holds-zero",
  "rising",
] as const;
export type NoHalfLifeReason = (typeof noHalfLifeReasons)[number];

/** In days, with the ends that the slope's interval gives. `line` is that of the natural logarithm of the net. */
export type HalfLife =
  | {
      readonly kind: "told";
      readonly days: number;
      readonly least: number;
      readonly most: number;
      readonly line: MedianLine;
    }
  | { readonly kind: "none"; readonly because: NoHalfLifeReason };

const none = (because: NoHalfLifeReason): HalfLife => ({ kind: "none", because });

/** The time in which a logarithm that falls by -slope a day falls by ln 2. 100 exp(-0.35 t) halves in 1.98042 days. */
const halved = (slope: number): number => Math.LN2 / -slope;

/**
 * How long the net takes to halve, if it falls by the same part every day: the median line through the logarithms. Told of five
 * days or more, all over zero, and only where the whole interval of the slope falls.
 */
export function halfLife(days: readonly CountableDay[]): HalfLife {
  if (days.length < LEAST_FOR_SHAPE) return none("too-few-days");
  if (days.some(({ mlPer24h }) => mlPer24h <= 0)) return none("not-every-day-over-zero");
  const line = theilSen(days.map(({ index, mlPer24h }) => ({ x: index, y: Math.log(mlPer24h) })));
  if (line.kind === "none" || line.interval.kind === "none") return none("too-few-days");
  const { low, high } = line.interval;
  if (low > 0) return none("rising");
  if (high >= 0) return none("interval-holds-zero");
  return { kind: "told", days: halved(line.slope), least: halved(low), most: halved(high), line };
}
