import { earliestOf, type Instant } from "#shared/day/instant.ts";
import { type NetVolume, netVolume } from "#shared/output/net-volume.ts";
import type { Reading } from "#shared/output/reading.ts";

/** A stretch of time, [from, to). */
export type Span = { readonly from: Instant; readonly to: Instant };

/** A reading with the time that it ran over and what it brought. */
export type MeasuredInterval = Span & { readonly reading: Reading; readonly net: NetVolume };

/** When a flush was ordered: always, never, or in these stretches (`to` null: still). */
export type FlushOrdered = boolean | readonly { readonly from: Instant; readonly to: Instant | null }[];

export type ReadingProblem =
  /** "Since last emptying", and there is none before it, nor a placement. */
  | { readonly code: "no-start"; readonly readings: readonly [string] }
  | { readonly code: "ends-in-future"; readonly readings: readonly [string] }
  /** Two readings speak of the same time: which is right is a person's to say, so neither is added up. */
  | (Span & { readonly code: "overlap"; readonly readings: readonly [string, string] });

const isOrdered = (ordered: FlushOrdered, { from, to }: Span): boolean =>
  typeof ordered === "boolean"
    ? ordered
    : ordered.some((span) => span.from < to && (span.to === null || span.to > from));

/** By time, then by id: the order of entry changes nothing. */
const inOrder = (a: Span & { reading: Reading }, b: Span & { reading: Reading }): number =>
  a.from - b.from || a.to - b.to || (a.reading.id < b.reading.id ? -1 : 1);

export type IntervalContext = {
  readonly flushOrdered: FlushOrdered;
  /** Where the first "since last emptying" begins; null when not known. */
  readonly placedAt: Instant | null;
  readonly now: Instant;
};

/** Each standing reading of one tube with its time. Every emptying counts as one, the aspirate at the placement too. */
export function measuredIntervals(readings: readonly Reading[], context: IntervalContext) {
  const problems: ReadingProblem[] = [];
  const intervals: MeasuredInterval[] = [];
  const emptied = [...new Set(readings.map(({ to }) => to))].sort((a, b) => a - b);
  const emptiedBefore = new Map(emptied.map((at, index) => [at, emptied[index - 1] ?? context.placedAt]));
  for (const reading of readings) {
    const from = reading.from === "since last emptying" ? emptiedBefore.get(reading.to) : reading.from;
    if (from === undefined || from === null || from >= reading.to) {
      problems.push({ code: "no-start", readings: [reading.id] });
    } else if (reading.to > context.now) {
      problems.push({ code: "ends-in-future", readings: [reading.id] });
    } else {
      const { to } = reading;
      const net = netVolume(reading, isOrdered(context.flushOrdered, { from, to }));
      intervals.push({ from, to, reading, net });
    }
  }
  problems.sort((a, b) => (a.readings[0] < b.readings[0] ? -1 : 1));
  return { intervals: intervals.sort(inOrder), problems };
}

/** The stretches that two intervals claim; together they cover all time that is claimed more than once. */
export function overlaps(intervals: readonly MeasuredInterval[]): Extract<ReadingProblem, Span>[] {
  const found: Extract<ReadingProblem, Span>[] = [];
  let furthest: MeasuredInterval | undefined;
  for (const next of intervals) {
    if (furthest !== undefined && next.from < furthest.to) {
      const to = earliestOf(next.to, furthest.to);
      found.push({ code: "overlap", from: next.from, to, readings: [furthest.reading.id, next.reading.id] });
    }
    if (furthest === undefined || next.to > furthest.to) furthest = next;
  }
  return found;
}
