import { type Day, daysBetween } from "#shared/day/day.ts";
import { voidsLow } from "#shared/output/low-day.ts";
import { UL_PER_ML } from "#shared/output/microlitre.ts";
import type { DayRemark, IncompleteReason, NetDay } from "#shared/output/net-day.ts";
import type { MlPer24h } from "#shared/output/rate.ts";

/** A complete day with a net that can be believed. `index`: whole days since the first one used. */
export type CountableDay = { readonly day: Day; readonly index: number; readonly mlPer24h: MlPer24h };

export type LeftOutReason = IncompleteReason | DayRemark | "earlier-segment";
export type LeftOutDay = { readonly day: Day; readonly because: readonly LeftOutReason[] };

export type CountableDays = {
  readonly used: readonly CountableDay[];
  readonly leftOut: readonly LeftOutDay[];
  /** The last day of the series, used or not; null of an empty one. */
  readonly until: Day | null;
};

function whyLeftOut(day: NetDay, lastSegment: number): readonly LeftOutReason[] {
  if (day.segment !== lastSegment) return ["earlier-segment"];
  return day.complete ? day.remarks.filter((remark) => voidsLow.includes(remark)) : day.because;
}

/** To the microlitre: days that brought the same are ties, whatever their length did to the last digit. */
const toMicrolitre = (rate: MlPer24h): MlPer24h => (Math.round(rate * UL_PER_ML) / UL_PER_ML) as MlPer24h;

/**
 * The days that a trend rests on, in order of time: of the last segment those that are complete, with a known net, and without a
 * remark for which a low figure would not count as low. Every other day is told with its reason.
 */
export function countableDays(days: readonly NetDay[]): CountableDays {
  const inOrder = days.toSorted((a, b) => a.from - b.from);
  const last = inOrder.at(-1);
  const used: CountableDay[] = [];
  const leftOut: LeftOutDay[] = [];
  for (const part of inOrder) {
    const because = whyLeftOut(part, last?.segment ?? 0);
    const { day, net } = part;
    if (because.length > 0 || net.kind !== "known") leftOut.push({ day, because });
    else
      used.push({
        day,
        index: daysBetween(used[0]?.day ?? day, day),
        mlPer24h: toMicrolitre(net.mlPer24h),
      });
  }
  return { used, leftOut, until: last?.day ?? null };
}
