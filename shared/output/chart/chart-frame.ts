import { addDays } from "#shared/day/day.ts";
import {
  dayAt,
  earliestOf,
  type Instant,
  instant,
  latestOf,
  startOfDay,
  type Zone,
} from "#shared/day/instant.ts";
import type { ChartFacts, ChartReading } from "#shared/output/chart/chart-facts.ts";
import type { Span } from "#shared/output/measured-interval.ts";
import type { Microlitres } from "#shared/output/microlitre.ts";
import { HOUR_MS, ratePer24h } from "#shared/output/rate.ts";

/** The time and the rates, in mL/24 h, that a drawing shows. Several tubes drawn in one frame can be held against each other. */
export type ChartFrame = Span & {
  readonly top: number;
  readonly bottom: number;
  /** From one line across to the next; 0 has one. */
  readonly step: number;
};

/** mL/24 h of a volume of this reading. */
export const rateIn = ({ from, to }: Span, volume: Microlitres): number => ratePer24h(volume, to - from);

/** A few minutes are no measure of a scale: 5 mL in ten minutes would be 720 mL/24 h. */
const sets = (reading: ChartReading, frame: Span): boolean =>
  reading.to > frame.from && reading.from < frame.to && reading.to - reading.from >= HOUR_MS;

const STEPS = [1, 2, 5, 10] as const;

/** The next of 1, 2, 5, 10, 20 ... that is not under the value, which is over 0. */
export function niceStep(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return (STEPS.find((step) => step * power >= value) ?? 10) * power;
}

/** About so many steps from bottom to top. */
const LINES = 6;

function ratesOf({ readings, limit }: ChartFacts, span: Span): readonly number[] {
  const bars = readings
    .filter((reading) => sets(reading, span))
    .flatMap((reading) =>
      [reading.drained, reading.net].map((ul) => (ul === null ? 0 : rateIn(reading, ul))),
    );
  return limit === null ? bars : [...bars, limit.underMl];
}

/** Where the last whole clinic days up to an instant begin; the day that it ends in is one of them. */
export const lastDaysFrom = (to: Instant, days: number, zone: Zone): Instant =>
  startOfDay(addDays(dayAt(instant(to - 1), zone), 1 - days), zone);

/** A frame of that time that is as high as the bars of these charts in it. */
export function frameWithin(charts: readonly ChartFacts[], span: Span): ChartFrame {
  const rates = charts.flatMap((chart) => ratesOf(chart, span));
  const most = Math.max(1, ...rates);
  const least = Math.min(0, ...rates);
  const step = niceStep((most - least) / LINES);
  return { ...span, step, top: Math.ceil(most / step) * step, bottom: Math.floor(least / step) * step };
}

/** The last days of several charts, up to the last of them: one axis of time; null where none has a reading. */
export function spanOf(charts: readonly ChartFacts[], days: number): Span | null {
  const spans = charts.flatMap(({ span, zone }) => (span === null ? [] : [{ ...span, zone }]));
  const [one] = spans;
  if (one === undefined) return null;
  const to = latestOf(...spans.map((span) => span.to));
  const firstDay = lastDaysFrom(to, days, one.zone);
  return { from: latestOf(firstDay, earliestOf(...spans.map(({ from }) => from))), to };
}

/** One frame round several charts: their last days, and every bar; null where none has a reading. */
export function frameOf(charts: readonly ChartFacts[], days: number): ChartFrame | null {
  const span = spanOf(charts, days);
  return span === null ? null : frameWithin(charts, span);
}

/** The last days of one chart, all of them where the tube is younger too: so the rows of a list are as wide in time as each other. */
export const wholeDaysFrame = (chart: ChartFacts, days: number): ChartFrame | null =>
  chart.span === null
    ? null
    : frameWithin([chart], { from: lastDaysFrom(chart.span.to, days, chart.zone), to: chart.span.to });
