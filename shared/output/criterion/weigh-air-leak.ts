import { type Instant, instant } from "#shared/day/instant.ts";
import type { Weighed } from "#shared/output/criterion/criterion.ts";
import { noEvidence } from "#shared/output/criterion/weighed.ts";
import { measuredIntervals } from "#shared/output/measured-interval.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";

export type AirLeakRule = {
  readonly readings: readonly Reading[];
  readonly hours: number;
  readonly now: Instant;
};

/**
 * No air leak for so many hours up to the end of the last reading: every reading of that time says so, and together they cover it. One that
 * says nothing, and an hour that no reading covers, is not known.
 */
export function weighAirLeak({ readings, hours, now }: AirLeakRule): Partial<Weighed> {
  const { intervals } = measuredIntervals(readings, { flushOrdered: false, placedAt: null, now });
  const last = intervals.reduce<number | null>((at, { to }) => Math.max(at ?? to, to), null);
  const unknown = [{ code: "air-leak-not-recorded", hours } as const];
  if (last === null) return { unknown };
  const start = last - hours * HOUR_MS;
  const looked = intervals.filter(({ to }) => to > start);
  const evidence = { ...noEvidence, readings: looked.map(({ reading }) => reading.id) };
  const leaks = looked.filter(({ reading }) => reading.airLeak === "present").toSorted((a, b) => b.to - a.to);
  const newest = leaks[0];
  if (newest !== undefined) return { against: [{ code: "air-leak", at: newest.to }], evidence };
  let reached = start;
  for (const { from, to } of looked) {
    if (from > reached) break;
    reached = Math.max(reached, to);
  }
  const said = looked.every(({ reading }) => reading.airLeak === "none");
  return said && instant(reached) >= last ? { evidence } : { unknown, evidence };
}
