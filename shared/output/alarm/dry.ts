import { dayAt, type Instant, instant, latestOf } from "#shared/day/instant.ts";
import { drainsNow, type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import type { MeasuredInterval, Span } from "#shared/output/measured-interval.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import { known } from "#shared/tube/certainty.ts";
import { isTrue } from "#shared/tube/open-record.ts";

const MINUTE_MS = 60_000;

const amount = (flush: Flush): number => (typeof flush === "object" ? flush.ul : 0);

const isEstimated = ({ gross, measuredBy, flushGiven, flushWithdrawn }: Reading): boolean =>
  gross.certainty === "estimated" ||
  measuredBy === "estimate" ||
  [flushGiven, flushWithdrawn].some((flush) => typeof flush === "object" && flush.estimated);

/**
 * Nothing came but the flush that went in. A flush that nobody wrote down only makes it less. Zero is zero even where it is
 * an estimate; an estimate that comes to zero is not. A volume that nobody knows is not zero.
 */
function drainedNothing(reading: Reading): boolean {
  const gross = known(reading.gross);
  if (gross === undefined) return false;
  const flush =
    reading.basis === "already net" ? 0 : amount(reading.flushGiven) - amount(reading.flushWithdrawn);
  return gross - flush <= 0 && (gross === 0 || !isEstimated(reading));
}

type Spell = Span & { readonly readings: readonly string[] };

const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/**
 * Stretches in which nothing ran, without a gap: readings in a row are one. Where another reading says otherwise of the
 * same time, a person says which is right, and neither counts.
 */
function drySpells(intervals: readonly MeasuredInterval[], since: Instant | null): readonly Spell[] {
  const nothing = intervals.filter(({ reading }) => drainedNothing(reading));
  const others = intervals.filter((interval) => !nothing.includes(interval));
  const spells: Spell[] = [];
  for (const interval of nothing) {
    if (others.some((other) => overlap(other, interval))) continue;
    const from = since === null ? interval.from : latestOf(interval.from, since);
    if (from >= interval.to) continue;
    const last = spells.at(-1);
    if (last === undefined || from > last.to) {
      spells.push({ from, to: interval.to, readings: [interval.reading.id] });
    } else {
      const to = latestOf(last.to, interval.to);
      spells.splice(-1, 1, { from: last.from, to, readings: [...last.readings, interval.reading.id] });
    }
  }
  return spells;
}

/** One kidney, or a transplant: nothing out of this tube may be no urine at all. */
const isOnlyWayOut = ({ tube, conditions }: Evidence): boolean =>
  isTrue(conditions.singleKidney) || isTrue(conditions.transplantKidney) || known(tube.side) === "transplant";

/** What was answered of being dry, and what lay before it, counts no more. */
const answeredUntil = ({ tube }: Evidence): Instant[] =>
  tube.answered.flatMap(({ key, until }) => (key.startsWith("dry:") && until !== null ? [until] : []));

/** Nothing over the row's hours, at them and not before. Hours of readings, not of silence: missing is not zero. */
export function dryReasons(evidence: Evidence): AlarmReason[] {
  const row = evidence.rows.dry.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  if (row === undefined || !drainsNow(evidence)) return [];
  const starts = [...answeredUntil(evidence), ...(evidence.since === null ? [] : [evidence.since])];
  const since = starts.length === 0 ? null : latestOf(...starts);
  const level = isOnlyWayOut(evidence) ? (row.onlyWayOut ?? row.level) : row.level;
  return drySpells(evidence.intervals, since)
    .filter(({ from, to }) => to - from >= row.hours * HOUR_MS)
    .map(({ from, to, readings }) => ({
      key: `dry:${readings[0]}`,
      code: "dry",
      level,
      untilReached: flagOf(evidence, "dry")?.untilReached ?? null,
      on: dayAt(instant(from + row.hours * HOUR_MS), evidence.zone),
      at: to,
      readings,
      args: { minutes: Math.floor((to - from) / MINUTE_MS), hours: row.hours },
      source: row.source,
    }));
}
