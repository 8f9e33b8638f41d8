import type { Day } from "#shared/day/day.ts";
import { type Instant, instant, latestOf } from "#shared/day/instant.ts";
import type { CriterionInput } from "#shared/output/criterion/criterion-input.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import type { Plateau } from "#shared/output/criterion/plateau.ts";
import type { LastReview } from "#shared/tube/state.ts";

/** Why a tube's output asks for a review before its day, by what is on record. */
export type OutputAsks = {
  /** Up to when the numeric part of the criterion is met, unless something is recorded before; null: it is not. To the minute. */
  readonly metUntil: Instant | null;
  /** The day with which a plateau came up that no review has seen; null: there is none. */
  readonly plateauSince: Day | null;
};

export const asksNothing: OutputAsks = { metUntil: null, plateauSince: null };

const MINUTE_MS = 60_000;
/** A table may let readings be older than any clinic would; the search ends somewhere. */
const FURTHEST_MS = 400 * 24 * 60 * MINUTE_MS;

/**
 * A plateau that a review rested on waits for the day that this review set; it is new again once it was gone. A decision without what was
 * seen in it has seen none.
 */
function isNew({ readings }: Plateau, lastReview: Pick<LastReview, "evidence"> | null): boolean {
  const seen = lastReview?.evidence?.readings ?? [];
  return readings.some((id) => !seen.includes(id));
}

/**
 * Time alone takes a met criterion away, as what it rests on gets old, and never brings it: its last minute is found by halving. Were it
 * to come and go, a law of this file would fail.
 */
function lastMet(input: Omit<CriterionInput, "now">, newest: Instant): Instant {
  const isMet = (minutes: number): boolean =>
    criterionOf({ ...input, now: instant(newest + minutes * MINUTE_MS) }).kind === "numeric part met";
  let met = 0;
  let over = FURTHEST_MS / MINUTE_MS;
  while (over - met > 1) {
    const middle = Math.floor((met + over) / 2);
    if (isMet(middle)) met = middle;
    else over = middle;
  }
  return instant(newest + met * MINUTE_MS);
}

/**
 * What a tube's output asks for, as it stands with its newest reading. Computed with every entry and kept, so that a list of a whole clinic
 * works no criterion out: it compares these with its own moment.
 */
export function outputAsks(input: Omit<CriterionInput, "now">): OutputAsks {
  if (input.readings.length === 0) return asksNothing;
  const newest = latestOf(...input.readings.map(({ to }) => to));
  const { kind, beside } = criterionOf({ ...input, now: newest });
  const plateau = beside.find((one) => one.code === "plateau");
  return {
    metUntil: kind === "numeric part met" ? lastMet(input, newest) : null,
    plateauSince: plateau !== undefined && isNew(plateau, input.tube.lastReview) ? plateau.since : null,
  };
}
