import { type Microlitres, microlitres, noVolume } from "#shared/output/microlitre.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";

export const unknownNetReasons = [
  "volume-unknown",
  "flush-not-recorded",
  "flush-withdrawn-not-recorded",
] as const;
export type UnknownNetReason = (typeof unknownNetReasons)[number];

export type NetVolume =
  | { readonly kind: "known"; readonly ul: Microlitres }
  | { readonly kind: "cannot tell"; readonly because: readonly UnknownNetReason[] };

/** The facts of a reading that make its net. */
export type NetFacts = Pick<Reading, "gross" | "basis" | "flushGiven" | "flushWithdrawn">;

const amountOf = (flush: Flush): Microlitres => (typeof flush === "string" ? noVolume : flush.ul);

function missing(reading: NetFacts, flushOrdered: boolean): UnknownNetReason[] {
  const because: UnknownNetReason[] = [];
  if (reading.gross.certainty === "unknown") because.push("volume-unknown");
  if (reading.basis === "already net") return because;
  if (flushOrdered && reading.flushGiven === "not recorded") because.push("flush-not-recorded");
  if (typeof reading.flushGiven === "object" && reading.flushWithdrawn === "not recorded") {
    because.push("flush-withdrawn-not-recorded");
  }
  return because;
}

/**
 * What the tube drained: gross plus what was drawn back, less the flush that was given. 25 mL emptied with 8 mL of flush is
 * 17; a negative result stands. What was ordered is never subtracted; ordered and not recorded is `cannot tell`.
 */
export function netVolume(reading: NetFacts, flushOrdered: boolean): NetVolume {
  const because = missing(reading, flushOrdered);
  if (reading.gross.certainty === "unknown" || because.length > 0) return { kind: "cannot tell", because };
  if (reading.basis === "already net") return { kind: "known", ul: reading.gross.value };
  const { gross, flushGiven, flushWithdrawn } = reading;
  return {
    kind: "known",
    ul: microlitres(gross.value + amountOf(flushWithdrawn) - amountOf(flushGiven)),
  };
}
