import { earliestOf, type Instant, type Zone } from "#shared/day/instant.ts";
import { type ChartLimit, chartLimit } from "#shared/output/chart/chart-limit.ts";
import { type TrendBand, trendBand } from "#shared/output/chart/trend-band.ts";
import {
  type MeasuredInterval,
  measuredIntervals,
  type ReadingProblem,
  type Span,
} from "#shared/output/measured-interval.ts";
import { type Microlitres, microlitres, noVolume } from "#shared/output/microlitre.ts";
import type { UnknownDayReason } from "#shared/output/net-day.ts";
import type { NetDays } from "#shared/output/net-days.ts";
import { flushIsOrdered, placedAt } from "#shared/output/output-of-tube.ts";
import type { Reading } from "#shared/output/reading.ts";
import { segmentChanges } from "#shared/output/segment-cuts.ts";
import type { TrendOfTube } from "#shared/output/trend/trend-of-tube.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Length } from "#shared/size/length.ts";
import { known } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { Character } from "#shared/tube/vocabulary.ts";

/** One reading over its time. `drained` is all that came out, flush too, `net` what counts of it; null is not known. */
export type ChartReading = Span & {
  readonly id: string;
  readonly drained: Microlitres | null;
  readonly net: Microlitres | null;
  readonly because: readonly UnknownDayReason[];
  readonly characters: readonly Character[];
};

/** What was drawn off at a placement, told apart: no output. */
export type ChartAspirate = { readonly id: string; readonly at: Instant; readonly ul: Microlitres | null };

export type ChartChange = ReturnType<typeof segmentChanges>[number];

/** What an output chart is drawn from, of one tube. */
export type ChartFacts = {
  readonly zone: Zone;
  /** The tube's time with output, to now or its end; null before its first reading. */
  readonly span: Span | null;
  /** In order of time. */
  readonly readings: readonly ChartReading[];
  readonly aspirates: readonly ChartAspirate[];
  /** How many readings nobody can place in time: they are drawn nowhere. */
  readonly unplaced: number;
  readonly changes: readonly ChartChange[];
  /** The tube's size now; null is unknown. */
  readonly size: Length | null;
  readonly limit: ChartLimit | null;
  readonly band: TrendBand | null;
};

function drainedOf({ gross, basis, flushWithdrawn }: Reading): Microlitres | null {
  if (gross.certainty === "unknown") return null;
  if (basis === "already net") return gross.value;
  const withdrawn = typeof flushWithdrawn === "string" ? noVolume : flushWithdrawn.ul;
  return microlitres(gross.value + withdrawn);
}

function readingOf({ reading, net, from, to }: MeasuredInterval, claimedTwice: boolean): ChartReading {
  const because: readonly UnknownDayReason[] = [
    ...(net.kind === "cannot tell" ? net.because : []),
    ...(claimedTwice ? (["overlap"] as const) : []),
  ];
  return {
    id: reading.id,
    from,
    to,
    drained: drainedOf(reading),
    net: net.kind === "known" && because.length === 0 ? net.ul : null,
    because,
    characters: reading.characters,
  };
}

/** The standing readings of a tube, and the rows that they are held against. */
export type ToChart = {
  readonly readings: readonly Reading[];
  readonly zone: Zone;
  readonly now: Instant;
  readonly protocol: Pick<Protocol, "output" | "outputRows">;
};

export type Charted = ToChart & { readonly output: NetDays; readonly trend: TrendOfTube };

/** The readings as bars: what was drawn off at a procedure is none, and of two that claim the same time neither counts. */
export function chartReadings(
  intervals: readonly MeasuredInterval[],
  problems: readonly ReadingProblem[],
): readonly ChartReading[] {
  const twice = new Set(problems.flatMap(({ code, readings }) => (code === "overlap" ? readings : [])));
  return intervals
    .filter(({ reading }) => !reading.procedureAspirate)
    .map((interval) => readingOf(interval, twice.has(interval.reading.id)));
}

export const chartAspirates = (aspirates: readonly Reading[]): readonly ChartAspirate[] =>
  aspirates.map((reading) => ({ id: reading.id, at: reading.to, ul: drainedOf(reading) }));

/** A tube's readings as bars, with what cut them, the row that they are held against, and the band of the trend. */
export function chartFacts(tube: TubeState, charted: Charted): ChartFacts {
  const { readings, zone, now, protocol, output, trend } = charted;
  const { intervals, problems } = measuredIntervals(readings, {
    flushOrdered: flushIsOrdered(tube),
    placedAt: placedAt(tube, zone),
    now,
  });
  const [first, last] = [output.days[0], output.days.at(-1)];
  return {
    zone,
    span:
      first === undefined || last === undefined || intervals.length === 0
        ? null
        : { from: first.from, to: earliestOf(last.to, now) },
    readings: chartReadings(intervals, output.problems),
    aspirates: chartAspirates(output.aspirates),
    unplaced: problems.length,
    changes: segmentChanges(tube.story, zone),
    size: known(tube.size) ?? null,
    limit: chartLimit(tube, protocol),
    band: trend.kind === "told" ? trendBand(trend, zone) : null,
  };
}
