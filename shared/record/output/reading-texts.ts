import type { Zone } from "#shared/day/instant.ts";
import { printMoment } from "#shared/day/print-day.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import { printMl } from "#shared/record/field/volume-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { SEEN_HERE } from "#shared/record/output/reading-form.ts";

const flushText = (flush: Flush): string => {
  if (typeof flush === "string") return flush;
  return `${flush.estimated ? "~" : ""}${printMl(flush.ul)}`;
};

/** A field that most tubes do without is blank where it says nothing. */
const orBlank = (said: string): string => (said === "not recorded" ? "" : said);

const symptomsText = (symptoms: Reading["symptoms"]): string =>
  typeof symptoms === "string" ? orBlank(symptoms) : symptoms.join(", ") || "none";

/** A reading as it would be typed into its form, by the clinic's clock: reading these texts again gives the same entry. */
export const readingTexts = (reading: Reading, zone: Zone): Texts => ({
  drained: reading.asSpoken,
  flushGiven: flushText(reading.flushGiven),
  to: printMoment(reading.to, zone),
  characters: reading.characters.join(", "),
  airLeak: orBlank(reading.airLeak),
  swing: orBlank(reading.swing),
  symptoms: symptomsText(reading.symptoms),
  leak: reading.leak,
  reportedBy: reading.reportedBy === SEEN_HERE ? "" : reading.reportedBy,
  from: reading.from === "since last emptying" ? "" : printMoment(reading.from, zone),
  flushWithdrawn: flushText(reading.flushWithdrawn),
  measuredBy: reading.measuredBy,
  basis: reading.basis,
  otherIn: reading.otherIn.map(({ fluid, ul }) => `${fluid} ${printMl(ul)}`).join(", "),
  procedureAspirate: reading.procedureAspirate ? "yes" : "no",
});
