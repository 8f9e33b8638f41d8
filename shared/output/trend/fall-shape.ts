import { type Day, daysBetween } from "#shared/day/day.ts";
import { median } from "#shared/output/median.ts";
import type { CountableDay } from "#shared/output/trend/countable-days.ts";
import { LEAST_FOR_SHAPE } from "#shared/output/trend/limits.ts";

/** Medians of the first and last third, and what lies between them; in mL/24 h. */
export type WholeFall = {
  readonly firstMedian: number;
  readonly lastMedian: number;
  readonly fall: number;
  /** How many days a third holds: a third of them, rounded up. */
  readonly third: number;
};

/** The largest fall from one used day to the next that lasts. */
export type LargestFall = { readonly from: Day; readonly to: Day; readonly fall: number };

export type FallShape =
  | (WholeFall & { readonly kind: "sudden"; readonly largest: LargestFall })
  | (WholeFall & { readonly kind: "gradual"; readonly largest: LargestFall | null })
  | { readonly kind: "no fall" }
  | { readonly kind: "cannot tell"; readonly because: "too-few-days" }
  | (WholeFall & {
      readonly kind: "cannot tell";
      readonly because: "days-missing-at-the-fall";
      readonly largest: LargestFall;
    });

/** A lasting fall has no later day over half way between the two medians. */
function largestLasting(days: readonly CountableDay[], halfWay: number): LargestFall | null {
  const lastOver = days.findLastIndex(({ mlPer24h }) => mlPer24h > halfWay);
  let largest: LargestFall | null = null;
  for (const [index, before] of days.entries()) {
    const next = days[index + 1];
    if (next === undefined || index < lastOver) continue;
    const fall = before.mlPer24h - next.mlPer24h;
    if (fall > (largest?.fall ?? 0)) largest = { from: before.day, to: next.day, fall };
  }
  return largest;
}

/**
 * Sudden or gradual, by one rule. There is a fall when every day of the last third lies under every day of the first; it is as large
 * as its two medians lie apart. It is sudden when from one day to the next it falls by half of that or more, and no later day comes
 * back over half way; otherwise gradual. Where days are missing at that place, nobody knows.
 */
export function fallShape(days: readonly CountableDay[]): FallShape {
  if (days.length < LEAST_FOR_SHAPE) return { kind: "cannot tell", because: "too-few-days" };
  const third = Math.ceil(days.length / 3);
  const first = days.slice(0, third).map(({ mlPer24h }) => mlPer24h);
  const last = days.slice(-third).map(({ mlPer24h }) => mlPer24h);
  if (Math.max(...last) >= Math.min(...first)) return { kind: "no fall" };
  const firstMedian = median(first) ?? 0;
  const lastMedian = median(last) ?? 0;
  const whole = { firstMedian, lastMedian, fall: firstMedian - lastMedian, third };
  const largest = largestLasting(days, (firstMedian + lastMedian) / 2);
  if (largest === null || largest.fall < whole.fall / 2) return { kind: "gradual", ...whole, largest };
  return daysBetween(largest.from, largest.to) === 1
    ? { kind: "sudden", ...whole, largest }
    : { kind: "cannot tell", because: "days-missing-at-the-fall", ...whole, largest };
}
