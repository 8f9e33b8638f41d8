import { bellTail } from "#shared/output/trend/bell-tail.ts";
import { exactTail } from "#shared/output/trend/exact-tail.ts";
import { type Kendall, kendall } from "#shared/output/trend/kendall.ts";
import { EXACT_UP_TO, LEAST_DAYS } from "#shared/output/trend/limits.ts";

/** `p`, two-sided: how often an S at least this far from 0 would come if there were no trend at all. */
export type MannKendall =
  | (Kendall & { readonly kind: "exact"; readonly p: number })
  | (Kendall & { readonly kind: "large sample"; readonly z: number; readonly p: number })
  | { readonly kind: "none"; readonly because: "too-few-days" };

/** One step less far from 0, since S moves in steps; 0 stays. */
const corrected = (s: number): number => s - Math.sign(s);

/**
 * Whether values in order of time rise or fall more often than chance would. Exact up to ten values without ties; else by the bell
 * curve, with the variance corrected for ties and S for continuity (US EPA QA/G-9S; Gilbert 1987, chapter 16).
 */
export function mannKendall(values: readonly number[]): MannKendall {
  if (values.length < LEAST_DAYS) return { kind: "none", because: "too-few-days" };
  const count = kendall(values);
  const { n, s, ties, variance } = count;
  if (n <= EXACT_UP_TO && ties.length === 0)
    return { kind: "exact", ...count, p: Math.min(1, 2 * exactTail(n, Math.abs(s))) };
  const z = variance === 0 ? 0 : corrected(s) / Math.sqrt(variance);
  return { kind: "large sample", ...count, z, p: Math.min(1, 2 * bellTail(Math.abs(z))) };
}
