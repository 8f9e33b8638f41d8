import { type Instant, latestOf } from "#shared/day/instant.ts";
import type { Evidence } from "#shared/output/alarm/evidence.ts";
import type { MeasuredInterval, Span } from "#shared/output/measured-interval.ts";
import { type Flush, isEstimated, type Reading } from "#shared/output/reading.ts";
import { known } from "#shared/tube/certainty.ts";

const amount = (flush: Flush): number => (typeof flush === "object" ? flush.ul : 0);

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

/** Something came beside the flush, even if nobody measured how much. Without the flush that was ordered nobody can say. */
export const drainedSome = ({ net }: MeasuredInterval): boolean => net.kind === "known" && net.ul > 0;

/** A stretch in which nothing ran, and the readings that say so. */
export type DrySpell = Span & { readonly readings: readonly string[] };

const overlap = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/**
 * Stretches in which nothing ran of the tube as it is set now, without a gap: readings in a row are one. What lay before it was answered
 * counts no more. Where another reading says otherwise of the same time, a person says which is right, and neither counts.
 */
export function drySpells(
  { intervals, since }: Pick<Evidence, "intervals" | "since">,
  answeredUntil: readonly Instant[] = [],
): readonly DrySpell[] {
  const nothing = intervals.filter(({ reading }) => drainedNothing(reading));
  const others = intervals.filter((interval) => !nothing.includes(interval));
  const spells: DrySpell[] = [];
  for (const interval of nothing) {
    if (others.some((other) => overlap(other, interval))) continue;
    const from = latestOf(interval.from, since ?? interval.from, ...answeredUntil);
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
