import { type Instant, instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import type { CountableDays } from "#shared/output/trend/countable-days.ts";
import type { TheilSen } from "#shared/output/trend/theil-sen.ts";

/** The two lines that a slope's interval leaves open, at both ends of its days, in mL/24 h. They cross at the median day. */
export type TrendBand = {
  readonly from: Instant;
  readonly to: Instant;
  readonly steepest: readonly [from: number, to: number];
  readonly flattest: readonly [from: number, to: number];
};

const NOON_MS = 43_200_000;

/** From the middle of the first day used to the middle of the last; null where no interval is told. */
export function trendBand(
  { days: { used }, line }: { readonly days: CountableDays; readonly line: TheilSen },
  zone: Zone,
): TrendBand | null {
  const [first, last] = [used[0], used.at(-1)];
  if (line.kind === "none" || line.interval.kind === "none" || first === undefined || last === undefined)
    return null;
  const { anchor, interval } = line;
  const ends = (slope: number) =>
    [anchor.y - slope * anchor.x, anchor.y + slope * (last.index - anchor.x)] as const;
  const noonOf = ({ day }: typeof first): Instant => instant(startOfDay(day, zone) + NOON_MS);
  return {
    from: noonOf(first),
    to: noonOf(last),
    steepest: ends(interval.low),
    flattest: ends(interval.high),
  };
}
