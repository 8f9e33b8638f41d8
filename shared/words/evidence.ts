import type { Flush, Reading } from "#shared/output/reading.ts";
import { toldFact } from "#shared/words/facts.ts";
import { printVolume } from "#shared/words/output.ts";

/** "about 10 mL", "none"; nothing where there was nothing to flush. */
export const flushWords = (flush: Flush | null): string =>
  flush === null
    ? ""
    : typeof flush === "string"
      ? flush
      : `${flush.estimated ? "about " : ""}${printVolume(flush.ul)}`;

/** A reading as a decision saw it: "35 mL, flush 10 mL". */
export function readingTold(reading: Reading): string {
  const volume = toldFact(reading.gross, { what: "volume", print: printVolume, telling: "marked" });
  return `${volume}${reading.basis === "already net" ? ", already net" : ""}, flush ${flushWords(reading.flushGiven)}`;
}
