import { earliestOf, type Instant, latestOf } from "#shared/day/instant.ts";
import type { DayPart } from "#shared/output/day-parts.ts";
import type { MeasuredInterval, Span } from "#shared/output/measured-interval.ts";
import { type Microlitres, microlitres, noVolume, sum, toMl } from "#shared/output/microlitre.ts";
import { unknownNetReasons } from "#shared/output/net-volume.ts";
import { type MlPer24h, ratePer24h } from "#shared/output/rate.ts";
import { isEstimated, type Reading } from "#shared/output/reading.ts";
import { touching } from "#shared/output/touching.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";

/** Why the net of a day cannot be told although something was written down. */
export const unknownDayReasons = [...unknownNetReasons, "overlap"] as const;
export type UnknownDayReason = (typeof unknownDayReasons)[number];

/** Why a day is not complete. Only a complete day can count as low. */
export const incompleteReasons = [
  ...unknownDayReasons,
  "no-reading",
  "gap",
  "part-of-a-day",
  "day-in-progress",
  "procedure-aspirate",
] as const;
export type IncompleteReason = (typeof incompleteReasons)[number];

/** What must be said beside a day's figure. */
export const dayRemarks = [
  "flush-does-not-come-back",
  "leak-round-tube",
  "estimated",
  "reported",
  "already-net",
  "other-fluid-went-in",
] as const;
export type DayRemark = (typeof dayRemarks)[number];

/** `missing` is not zero: nobody measured. The rate is scaled to 24 hours from the hours that are covered. */
export type DayNet =
  | { readonly kind: "known"; readonly ul: Microlitres; readonly mlPer24h: MlPer24h }
  | { readonly kind: "cannot tell"; readonly because: readonly UnknownDayReason[] }
  | { readonly kind: "missing" };

export type NetDay = DayPart & {
  readonly net: DayNet;
  readonly coveredMs: number;
  readonly complete: boolean;
  readonly because: readonly IncompleteReason[];
  readonly remarks: readonly DayRemark[];
  /** Ids of the readings that it comes from. */
  readonly readings: readonly string[];
};

export type FlushRow = Pick<Protocol["output"], "flushDoesNotComeBackMl">;

/** What one day is made of: the intervals that touch it, and aspirates and doubly claimed stretches of the tube, in order of time. */
export type DayEvidence = {
  readonly inside: readonly MeasuredInterval[];
  readonly aspirates: readonly Span[];
  readonly claimedTwice: readonly Span[];
  readonly row: FlushRow;
  readonly now: Instant;
};

/** What had run by that instant at an even pace, in whole microlitres: parts of a reading add up to the reading. */
function runBy({ from, to }: Span, ul: Microlitres, at: Instant): number {
  return Math.round(ul * ((earliestOf(latestOf(at, from), to) - from) / (to - from)));
}

function shareOf(interval: MeasuredInterval, part: Span): Microlitres {
  if (interval.net.kind === "cannot tell") return noVolume;
  const { ul } = interval.net;
  return microlitres(runBy(interval, ul, part.to) - runBy(interval, ul, part.from));
}

/** Milliseconds of the part that some interval covers; time claimed twice counts once. */
function coverage(part: Span, spans: readonly Span[]): number {
  let reached = part.from;
  let covered = 0;
  for (const { from, to } of spans) {
    const end = earliestOf(to, part.to);
    covered += Math.max(0, end - latestOf(from, reached));
    reached = latestOf(reached, end);
  }
  return covered;
}

function netOf(part: Span, inside: readonly MeasuredInterval[], claimedTwice: boolean): DayNet {
  if (inside.length === 0) return { kind: "missing" };
  const found = new Set<UnknownDayReason>(
    inside.flatMap(({ net }) => (net.kind === "cannot tell" ? net.because : [])),
  );
  if (claimedTwice) found.add("overlap");
  if (found.size > 0)
    return { kind: "cannot tell", because: unknownDayReasons.filter((reason) => found.has(reason)) };
  const ul = sum(inside.map((interval) => shareOf(interval, part)));
  return { kind: "known", ul, mlPer24h: ratePer24h(ul, coverage(part, inside)) };
}

function whyIncomplete(part: DayPart, evidence: DayEvidence, coveredMs: number): IncompleteReason[] {
  const because: IncompleteReason[] = [];
  if (coveredMs === 0) because.push("no-reading");
  else if (coveredMs < part.to - part.from) because.push("gap");
  if (!part.whole) because.push("part-of-a-day");
  if (part.to > evidence.now) because.push("day-in-progress");
  if (evidence.aspirates.some(touching(part))) because.push("procedure-aspirate");
  return because;
}

const holds: Readonly<Record<Exclude<DayRemark, "flush-does-not-come-back">, (reading: Reading) => boolean>> =
  {
    "leak-round-tube": ({ leak }) => leak === "damp" || leak === "soaking",
    estimated: isEstimated,
    reported: ({ gross }) => gross.certainty === "reported",
    "already-net": ({ basis }) => basis === "already net",
    "other-fluid-went-in": ({ otherIn }) => otherIn.length > 0,
  };

/**
 * The flush stays inside: at or under the row. A complete day is held against it by its rate, any other by what really ran,
 * so that a few minutes after a flush are not scaled up to a day's loss.
 */
function flushStaysIn(net: DayNet, complete: boolean, row: FlushRow): boolean {
  return net.kind === "known" && (complete ? net.mlPer24h : toMl(net.ul)) <= row.flushDoesNotComeBackMl;
}

/** One clinic day, or the part of it that lies in one segment. */
export function netDay(part: DayPart, evidence: DayEvidence): NetDay {
  const { inside } = evidence;
  const net = netOf(part, inside, evidence.claimedTwice.some(touching(part)));
  const coveredMs = coverage(part, inside);
  const because = [
    ...(net.kind === "cannot tell" ? net.because : []),
    ...whyIncomplete(part, evidence, coveredMs),
  ];
  const complete = because.length === 0;
  const remarks = dayRemarks.filter((remark) =>
    remark === "flush-does-not-come-back"
      ? flushStaysIn(net, complete, evidence.row)
      : inside.some(({ reading }) => holds[remark](reading)),
  );
  // Field by field: to spread an object of instants costs the engine more than all the rest of a day.
  const { day, segment, from, to, whole } = part;
  return {
    day,
    segment,
    from,
    to,
    whole,
    net,
    coveredMs,
    complete,
    because,
    remarks,
    readings: inside.map(({ reading }) => reading.id),
  };
}
