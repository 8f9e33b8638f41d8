import type { Flush, Reading } from "#shared/output/reading.ts";
import { toldFact } from "#shared/words/facts.ts";
import { printVolume } from "#shared/words/output.ts";

export const flushWords = (flush: Flush): string =>
  typeof flush === "string" ? flush : `${flush.estimated ? "about " : ""}${printVolume(flush.ul)}`;

/** A reading as a decision saw it: "35 mL, flush 10 mL". */
export function readingTold(reading: Reading): string {
  const volume = toldFact(reading.gross, { what: "volume", print: printVolume, telling: "marked" });
  return `${volume}${reading.basis === "already net" ? ", already net" : ""}, flush ${flushWords(reading.flushGiven)}`;
}
