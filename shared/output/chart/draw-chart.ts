import { addDays, type Day, daysBetween } from "#shared/day/day.ts";
import { dayAt, type Instant, instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import type {
  ChartAspirate,
  ChartChange,
  ChartFacts,
  ChartReading,
} from "#shared/output/chart/chart-facts.ts";
import { type ChartFrame, rateIn } from "#shared/output/chart/chart-frame.ts";
import type { Span } from "#shared/output/measured-interval.ts";

/** All in percent of the drawing, from its left and from its top. */
export type Box = { readonly x: number; readonly width: number; readonly y: number; readonly height: number };
export type Point = { readonly x: number; readonly y: number };

/**
 * A reading as a bar. `counted` is its net, which hangs below zero when it is negative; `notCounted` the flush on top. Where the net
 * cannot be told, all that came out is `doubtful`. `cut`: it reaches over the frame. A volume that nobody knows leaves a box from top
 * to bottom that is `unknown`.
 */
export type DrawnBar = {
  readonly reading: ChartReading;
  readonly counted: Box | null;
  readonly notCounted: Box | null;
  readonly doubtful: Box | null;
  readonly unknown: Box | null;
  readonly cut: boolean;
  /** The middle of its time, from the left. */
  readonly middle: number;
  /** From the top, where its letters stand over it; null where its look is that of the bar before. */
  readonly letters: number | null;
};

export type ChartDrawing = {
  readonly bars: readonly DrawnBar[];
  /** Time that no reading covers. */
  readonly gaps: readonly Box[];
  readonly aspirates: readonly (ChartAspirate & { readonly x: number })[];
  readonly changes: readonly (ChartChange & { readonly x: number })[];
  readonly zero: number;
  readonly limit: number | null;
  /** Corners of the trend's band: two triangles that touch at the median day. */
  readonly band: readonly Point[] | null;
  readonly lines: readonly { readonly y: number; readonly ml: number }[];
  readonly days: readonly { readonly x: number; readonly day: Day }[];
};

type Scale = {
  readonly x: (at: Instant) => number;
  readonly y: (rate: number) => number;
  readonly box: (span: Span, rates: readonly [number, number]) => Box;
};

const rounded = (value: number): number => Math.round(value * 100) / 100 + 0;
const inside = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

function scaleOf({ from, to, top, bottom }: ChartFrame): Scale {
  const x = (at: Instant): number => rounded(((inside(at, from, to) - from) / (to - from)) * 100);
  const y = (rate: number): number => rounded(((top - inside(rate, bottom, top)) / (top - bottom)) * 100);
  return {
    x,
    y,
    box: (span, [a, b]) => {
      const [left, upper] = [x(span.from), y(Math.max(a, b))];
      return {
        x: left,
        width: rounded(x(span.to) - left),
        y: upper,
        height: rounded(y(Math.min(a, b)) - upper),
      };
    },
  };
}

const reaches = (span: Span, frame: Span): boolean => span.to > frame.from && span.from < frame.to;

type Drawn = { readonly frame: ChartFrame; readonly scale: Scale };

function drawBar(reading: ChartReading, { frame, scale }: Drawn, looksNew: boolean): DrawnBar {
  const rate = (ul: ChartReading["net"]): number | null => (ul === null ? null : rateIn(reading, ul));
  const net = rate(reading.net);
  const drained = rate(reading.drained);
  const box = (a: number, b: number): Box | null => (a === b ? null : scale.box(reading, [a, b]));
  const top = Math.max(0, net ?? 0, drained ?? 0);
  return {
    reading,
    counted: net === null ? null : box(0, net),
    notCounted: net === null || drained === null ? null : box(Math.max(0, net), Math.max(0, drained)),
    doubtful: net === null && drained !== null ? box(0, drained) : null,
    unknown: drained === null ? box(frame.bottom, frame.top) : null,
    cut: top > frame.top || (net ?? 0) < frame.bottom,
    middle: rounded((scale.x(reading.from) + scale.x(reading.to)) / 2),
    letters: looksNew ? scale.y(top) : null,
  };
}

const lookOf = ({ characters }: ChartReading): string => characters.join();

function drawBars({ readings }: ChartFacts, drawn: Drawn): readonly DrawnBar[] {
  const shown = readings.filter((reading) => reaches(reading, drawn.frame));
  return shown.map((reading, index) => {
    const before = shown[index - 1];
    const looksNew =
      reading.characters.length > 0 && (before === undefined || lookOf(before) !== lookOf(reading));
    return drawBar(reading, drawn, looksNew);
  });
}

/** Narrower than this nothing would be seen of it. */
const LEAST_GAP = 0.3;

/** What of the tube's time no reading covers. What was drawn off at a procedure covers none. */
function drawGaps({ readings, span }: ChartFacts, { frame, scale }: Drawn): readonly Box[] {
  if (span === null) return [];
  const gaps: Span[] = [];
  let reached = span.from;
  for (const { from, to } of readings) {
    if (from > reached) gaps.push({ from: reached, to: from });
    if (to > reached) reached = to;
  }
  if (span.to > reached) gaps.push({ from: reached, to: span.to });
  return gaps
    .filter((gap) => reaches(gap, frame))
    .map((gap) => scale.box(gap, [frame.bottom, frame.top]))
    .filter(({ width }) => width >= LEAST_GAP);
}

function drawBand({ band }: ChartFacts, { frame, scale }: Drawn): readonly Point[] | null {
  if (band === null || !reaches(band, frame)) return null;
  const { from, to, steepest, flattest } = band;
  /** Where a line stands at the left end, which the frame may have cut. */
  const at = ([first, last]: TrendLine, when: Instant): number =>
    first + ((last - first) * (when - from)) / (to - from);
  const left = inside(from, frame.from, frame.to) as Instant;
  return (
    [
      [left, at(steepest, left)],
      [to, steepest[1]],
      [to, flattest[1]],
      [left, at(flattest, left)],
    ] as const
  ).map(([when, rate]) => ({ x: scale.x(when), y: scale.y(rate) }));
}

type TrendLine = readonly [from: number, to: number];

function linesOf(frame: ChartFrame, { y }: Scale): ChartDrawing["lines"] {
  const { top, bottom, step } = frame;
  const first = Math.round(bottom / step);
  const count = Math.round(top / step) - first + 1;
  return Array.from({ length: count }, (_, index) => (first + index) * step).map((ml) => ({ ml, y: y(ml) }));
}

const MOST_DAYS = 7;

/** Midnights of the clinic, not more than can be named. */
function daysOf(frame: ChartFrame, zone: Zone, { x }: Scale): ChartDrawing["days"] {
  const first = dayAt(frame.from, zone);
  const count = daysBetween(first, dayAt(instant(frame.to - 1), zone)) + 1;
  const step = Math.ceil(count / MOST_DAYS);
  return Array.from({ length: Math.ceil(count / step) }, (_, index) => addDays(first, index * step))
    .map((day) => ({ day, at: startOfDay(day, zone) }))
    .filter(({ at }) => at >= frame.from && at < frame.to)
    .map(({ day, at }) => ({ day, x: x(at) }));
}

/** Where everything of one tube's output stands in a frame. Nothing is drawn here; whoever draws adds strokes and words. */
export function drawChart(facts: ChartFacts, frame: ChartFrame): ChartDrawing {
  const scale = scaleOf(frame);
  const drawn = { frame, scale };
  const isOn = ({ at }: { readonly at: Instant }): boolean => frame.from <= at && at <= frame.to;
  const placed = <T extends { readonly at: Instant }>(those: readonly T[]) =>
    those.filter(isOn).map((one) => ({ ...one, x: scale.x(one.at) }));
  return {
    bars: drawBars(facts, drawn),
    gaps: drawGaps(facts, drawn),
    aspirates: placed(facts.aspirates),
    changes: placed(facts.changes),
    zero: scale.y(0),
    limit: facts.limit === null ? null : scale.y(facts.limit.underMl),
    band: drawBand(facts, drawn),
    lines: linesOf(frame, scale),
    days: daysOf(frame, facts.zone, scale),
  };
}
