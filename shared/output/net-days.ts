import { earliestOf, type Instant, latestOf, type Zone } from "#shared/day/instant.ts";
import { dayParts } from "#shared/output/day-parts.ts";
import {
  type FlushOrdered,
  measuredIntervals,
  overlaps,
  type ReadingProblem,
} from "#shared/output/measured-interval.ts";
import { type FlushRow, type NetDay, netDay } from "#shared/output/net-day.ts";
import type { Reading } from "#shared/output/reading.ts";
import { touchingEach } from "#shared/output/touching.ts";

export type NetDaysInput = {
  /** The standing readings of one tube, in any order. */
  readonly readings: readonly Reading[];
  /** The clinic's zone: a day is a day of the clinic, wherever a reading was taken. */
  readonly zone: Zone;
  readonly flushOrdered: FlushOrdered;
  /** Instants at which size, mode, suction or position changed: each ends a segment. */
  readonly cuts: readonly Instant[];
  /** Placement and removal, null when not known or not yet. */
  readonly placedAt: Instant | null;
  readonly outAt: Instant | null;
  readonly row: FlushRow;
  readonly now: Instant;
};

export type NetDays = {
  /** Every day from the first to the last, those without a reading too: a gap is seen. */
  readonly days: readonly NetDay[];
  readonly problems: readonly ReadingProblem[];
  /** What was drawn off at a placement: no output, in no day. */
  readonly aspirates: readonly Reading[];
};

/**
 * Readings to net days. The net of a reading runs out evenly over its time and is cut at the clinic's midnights and at each
 * change of segment, by cumulative rounding: the days of readings that do not overlap add up to their net to the microlitre.
 * A reading that cannot be placed in time is a problem and counts in no day.
 */
export function netDays(input: NetDaysInput): NetDays {
  const { intervals, problems } = measuredIntervals(input.readings, input);
  const output = intervals.filter(({ reading }) => !reading.procedureAspirate);
  const aspirates = intervals.filter(({ reading }) => reading.procedureAspirate);
  const claimedTwice = overlaps(output);
  const told = {
    problems: [...problems, ...claimedTwice],
    aspirates: input.readings.filter((reading) => reading.procedureAspirate),
  };

  const first = output[0]?.from ?? input.placedAt;
  if (first === null) return { days: [], ...told };
  const ends = output.map(({ to }) => to);
  const opens = input.placedAt === null ? null : earliestOf(input.placedAt, first);
  const closes = input.outAt === null ? null : latestOf(input.outAt, ...ends);
  const stretch = { first: opens ?? first, last: closes ?? input.now, opens, closes, cuts: input.cuts };
  const parts = dayParts(stretch, input.zone);
  const inside = touchingEach(parts, output);
  const evidence = { aspirates, claimedTwice, row: input.row, now: input.now };
  const days = parts.map((part, index) => netDay(part, { inside: inside[index] ?? [], ...evidence }));
  return { days, ...told };
}
