import type { Zone } from "#shared/day/instant.ts";
import { printInstant } from "#shared/day/print-day.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import { printMl } from "#shared/record/field/volume-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { SEEN_HERE } from "#shared/record/output/reading-form.ts";

const flushText = (flush: Flush): string => {
  if (typeof flush === "string") return flush;
  return `${flush.estimated ? "~" : ""}${printMl(flush.ul)}`;
};

/** A reading as it would be typed into its form, by the clinic's clock: reading these texts again gives the same entry. */
export const readingTexts = (reading: Reading, zone: Zone): Texts => ({
  drained: reading.asSpoken,
  flushGiven: flushText(reading.flushGiven),
  to: printInstant(reading.to, zone),
  characters: reading.characters.join(", "),
  leak: reading.leak,
  reportedBy: reading.reportedBy === SEEN_HERE ? "" : reading.reportedBy,
  from: reading.from === "since last emptying" ? "" : printInstant(reading.from, zone),
  flushWithdrawn: flushText(reading.flushWithdrawn),
  measuredBy: reading.measuredBy,
  basis: reading.basis,
  otherIn: reading.otherIn.map(({ fluid, ul }) => `${fluid} ${printMl(ul)}`).join(", "),
  procedureAspirate: reading.procedureAspirate ? "yes" : "no",
});
