import {
  dayAt,
  earliestOf,
  endOfDay,
  type Instant,
  latestOf,
  startOfDay,
  type Zone,
} from "#shared/day/instant.ts";
import {
  type ChartFacts,
  chartAspirates,
  chartReadings,
  type ToChart,
} from "#shared/output/chart/chart-facts.ts";
import { lastDaysFrom } from "#shared/output/chart/chart-frame.ts";
import { chartLimit } from "#shared/output/chart/chart-limit.ts";
import { measuredIntervals, overlaps, type Span } from "#shared/output/measured-interval.ts";
import { flushIsOrdered, placedAt } from "#shared/output/output-of-tube.ts";
import { segmentChanges } from "#shared/output/segment-cuts.ts";
import { known } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Clinic days of a small chart, the one in progress among them. */
export const RECENT_DAYS = 14;

/** The time that a small chart of a tube shows: its last days up to now, or up to the end of the day on which it came out. */
export function recentSpan(tube: TubeState, { zone, now }: Pick<ToChart, "zone" | "now">): Span {
  const ended = tube.ending?.when.latest ?? null;
  const to = ended === null ? now : earliestOf(now, endOfDay(ended, zone));
  return { from: lastDaysFrom(to, RECENT_DAYS, zone), to };
}

/** Of a placement without a clock time the whole day is open. */
function beginning(placed: Instant | null, first: Instant | null, zone: Zone): Instant | null {
  if (placed === null) return first === null ? null : startOfDay(dayAt(first, zone), zone);
  return first === null ? placed : earliestOf(placed, first);
}

/**
 * The last days of a tube's output, for a list. `readings` are those that end in these days, every one back to where the first of them
 * begins, and at least one before, where there is one: the emptying since which the first has run.
 */
export function recentChart(tube: TubeState, { readings, zone, now, protocol }: ToChart): ChartFacts {
  const { from, to } = recentSpan(tube, { zone, now });
  const placed = placedAt(tube, zone);
  const { intervals, problems } = measuredIntervals(readings, {
    flushOrdered: flushIsOrdered(tube),
    placedAt: placed,
    now,
  });
  const output = intervals.filter(({ reading }) => !reading.procedureAspirate);
  const isOlder = readings.some((reading) => reading.to <= from);
  const begins = isOlder ? from : beginning(placed, output[0]?.from ?? null, zone);
  return {
    zone,
    span: begins === null || readings.length === 0 ? null : { from: latestOf(from, begins), to },
    readings: chartReadings(intervals, overlaps(output)).filter((reading) => reading.to > from),
    aspirates: chartAspirates(readings.filter((one) => one.procedureAspirate && one.to > from)),
    unplaced: problems.filter(({ readings: [id] }) => readings.some((one) => one.id === id && one.to > from))
      .length,
    changes: segmentChanges(tube.story, zone).filter(({ at }) => at >= from),
    size: known(tube.size) ?? null,
    limit: chartLimit(tube, protocol),
    band: null,
  };
}
