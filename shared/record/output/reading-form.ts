import type { Instant } from "#shared/day/instant.ts";
import { printMoment } from "#shared/day/print-day.ts";
import { readInstant } from "#shared/day/read-when-at.ts";
import { type Parsed, parsed, type Refusal } from "#shared/errors/refusal.ts";
import {
  type AirLeak,
  airLeaks,
  type Leak,
  leaks,
  type MeasuredBy,
  measuredBy,
  type Reading,
  type Swing,
  swings,
} from "#shared/output/reading.ts";
import { choiceField, choicesOf, flagField, optionalChoiceField } from "#shared/record/field/choice-field.ts";
import { fluidsField } from "#shared/record/field/fluids-field.ts";
import { hourTwice } from "#shared/record/field/hour-twice.ts";
import { lastYearsDay } from "#shared/record/field/last-years-day.ts";
import { symptomsField } from "#shared/record/field/symptoms-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { drainedField, flushField } from "#shared/record/field/volume-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import type { OutputGroup } from "#shared/tube/kind/define.ts";
import { characters } from "#shared/tube/vocabulary.ts";
import { characterWords } from "#shared/words/characters.ts";

/** A reading without the ids that the server gives it. */
export type ReadingEntry = Omit<Reading, "id" | "tubeId">;

/** The start of a reading that counts since the one before it. */
export const SINCE_LAST = "since last emptying";
const REPORTER_LIMIT = 120;
/** Stands for who told of a reading when nobody did. */
export const SEEN_HERE = "seen here";
/** The end of a reading, to the minute, so that what is echoed is what is stored. */
const endField = (context: FormContext): FieldSpec<Instant> => ({
  label: "Emptied at",
  initial: "now",
  hint: "now, 14:05, yesterday 23:50",
  read: (text) => readInstant(text, context),
  echo: (at) => printMoment(at, context.zone),
  doubt: (at, text) => lastYearsDay(text, context) ?? hourTwice(at, context.zone),
});

const startField = (context: FormContext): FieldSpec<Reading["from"]> => ({
  label: "Since",
  hint: "blank: since the last emptying",
  detail: true,
  read: (text): Parsed<Reading["from"]> =>
    text.trim() === "" ? parsed(SINCE_LAST) : readInstant(text, context),
  echo: (from) => (from === SINCE_LAST ? "Since the last emptying" : printMoment(from, context.zone)),
  doubt: (from, text) =>
    lastYearsDay(text, context) ?? (from === SINCE_LAST ? null : hourTwice(from, context.zone)),
});

const bases = [
  { value: "gross", label: "Gross, as measured" },
  { value: "already net", label: "Already net: flush is subtracted" },
] as const;

const NOT_RECORDED = "not recorded";

/** Whether a reading of this tube is asked for what only tubes of those groups show. */
const isOf =
  ({ output }: FormContext, ...groups: readonly OutputGroup[]) =>
  (): boolean =>
    groups.some((group) => group === output?.group);

/** Of a chest tube whether air bubbles and the water moves, of a tube drained by session what was felt; shown where it belongs. */
const seenFields = (context: FormContext) => ({
  airLeak: {
    ...optionalChoiceField<AirLeak>(
      { label: "Air leak" },
      choicesOf(airLeaks.filter((leak) => leak !== NOT_RECORDED)),
      "Not recorded",
    ),
    belongs: isOf(context, "chest"),
  },
  swing: {
    ...optionalChoiceField<Swing>(
      { label: "Swing with breathing" },
      choicesOf(swings.filter((swing) => swing !== NOT_RECORDED)),
      "Not recorded",
    ),
    belongs: isOf(context, "chest"),
  },
  symptoms: {
    ...symptomsField({ label: "Felt during it", hint: "none, or cough, pain, breathlessness" }),
    belongs: isOf(context, "pleural", "peritoneal"),
  },
});

/** Log an emptying. Flush ordered is not flush given: what went in is typed, or it is not recorded. */
export const readingForm = form({
  fields: (context: FormContext) => ({
    drained: drainedField({
      label: "Drained, mL",
      hint: "35; 0 for nothing; ~40 if about; 2 oz; ? if unknown",
    }),
    flushGiven: flushField({ label: "Flush given, mL", hint: "10, 3 x 10, none; ? if not recorded" }),
    to: endField(context),
    characters: wordsField(
      { label: "Character", hint: `with commas between: ${characters.join(", ")}` },
      characterWords,
    ),
    ...seenFields(context),
    leak: choiceField(
      { label: "Leak round the tube", what: "none, damp or soaking", initial: "not recorded" },
      choicesOf<Leak>(leaks),
    ),
    reportedBy: lineField({ label: "Told by", hint: "blank: seen here" }, REPORTER_LIMIT),
    from: startField(context),
    flushWithdrawn: flushField({ label: "Flush drawn back, mL", initial: "none", detail: true }),
    measuredBy: choiceField(
      { label: "Measured by", what: "how it was measured", initial: "not recorded", detail: true },
      choicesOf<MeasuredBy>(measuredBy),
    ),
    basis: choiceField(
      { label: "The figure is", what: "gross or already net", initial: "gross", detail: true },
      bases,
    ),
    otherIn: fluidsField({ label: "Other fluid put in", hint: "contrast 20, irrigation 500", detail: true }),
    procedureAspirate: flagField({ label: "Drawn off at the procedure itself", detail: true }),
  }),
  check: ({ drained, basis, from, to }) => {
    const refusals: Refusal[] = [];
    const { volume } = drained;
    if (basis === "gross" && volume.certainty !== "unknown" && volume.value < 0)
      refusals.push({ code: "volume-negative", field: "drained", args: { text: drained.asSpoken } });
    if (from !== SINCE_LAST && from >= to) refusals.push({ code: "reading-ends-before-start", field: "to" });
    return refusals;
  },
  entry: ({ drained, characters: seen, reportedBy, airLeak, swing, ...said }, { zone }): ReadingEntry => ({
    ...said,
    zone,
    gross: sourced(drained.volume, reportedBy !== null),
    characters: [...(seen ?? [])],
    otherIn: [...said.otherIn],
    airLeak: airLeak ?? NOT_RECORDED,
    swing: swing ?? NOT_RECORDED,
    reportedBy: reportedBy ?? SEEN_HERE,
    asSpoken: drained.asSpoken,
  }),
});
