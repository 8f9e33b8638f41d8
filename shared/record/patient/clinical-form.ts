import type { Imaging } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { parsed, type Refusal } from "#shared/errors/refusal.ts";
import { choicesOf, factChoiceField, yesNoField } from "#shared/record/field/choice-field.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { measureField } from "#shared/record/field/measure-field.ts";
import { lineField, noteField, textFactField } from "#shared/record/field/text-field.ts";
import { WHEN_HINT, whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { saidOf } from "#shared/record/said-of.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { feelings, type ImagingFinding, imagingFindings } from "#shared/tube/vocabulary.ts";

/** The day of a film, which lies behind; blank says nothing. */
const filmDayField = (words: FieldWords, { today }: FormContext): FieldSpec<Day | undefined> => ({
  ...words,
  read: (text) => (text.trim() === "" ? parsed(undefined) : readDay(text, { today, direction: "past" })),
  echo: (day) => (day === undefined ? "" : printDay(day)),
});

/** Until when antibiotics are given, or "none". Blank says nothing. */
const antibioticsField = (
  words: FieldWords,
  { today }: FormContext,
): FieldSpec<Fact<Day | "none"> | undefined> => ({
  ...words,
  read: (text) => {
    const typed = text.trim().toLowerCase();
    if (typed === "") return parsed(undefined);
    if (typed === "?") return parsed(unknownFact);
    if (typed === "none") return parsed(confirmed(typed));
    const until = readDay(text, { today, direction: "future" });
    return until.ok ? parsed(confirmed(until.value)) : until;
  },
  echo: (fact) => factWords(fact, (until) => (until === "none" ? until : printDay(until))),
});

type Film = {
  readonly imaging: Fact<ImagingFinding> | undefined;
  readonly imagingOn: Day | undefined;
  readonly imagingWords: string | null;
};

/** A finding needs its day, a day its finding, and "other" its words. */
function filmRefusals({ imaging, imagingOn, imagingWords }: Film): readonly Refusal[] {
  const finding = imaging?.certainty === "unknown" ? undefined : imaging?.value;
  const refusals: Refusal[] = [];
  if (imaging === undefined && (imagingOn !== undefined || imagingWords !== null))
    refusals.push({ code: "text-missing", field: "imaging", args: { what: "what the imaging showed" } });
  if (finding !== undefined && imagingOn === undefined)
    refusals.push({ code: "text-missing", field: "imagingOn", args: { what: "the day of the imaging" } });
  if (finding === "other" && imagingWords === null)
    refusals.push({ code: "text-missing", field: "imagingWords", args: { what: "what it showed" } });
  return refusals;
}

function filmOf({ imaging, imagingOn, imagingWords }: Film): Fact<Imaging> | undefined {
  if (imaging === undefined || imaging.certainty === "unknown") return imaging;
  if (imagingOn === undefined) return undefined;
  return { ...imaging, value: { on: imagingOn, finding: imaging.value, words: imagingWords } };
}

/** Note how the patient is: only what is typed is said, each by who said it and as of when. */
export const clinicalForm = form({
  fields: (context: FormContext) => ({
    temperature: measureField("temperature", { label: "Temperature", hint: "37.2, or 99 F; ? if unknown" }),
    chills: yesNoField({ label: "Shaking chills" }),
    feels: factChoiceField({ label: "Feels" }, choicesOf(feelings)),
    pain: measureField("pain", { label: "Pain", hint: "0 none, 10 the worst" }),
    jaundice: yesNoField({ label: "Jaundice", hint: "yellow skin or eyes" }),
    coughOrBreathlessness: yesNoField({ label: "Cough or breathlessness" }),
    imaging: factChoiceField({ label: "Imaging showed" }, choicesOf(imagingFindings)),
    imagingOn: filmDayField({ label: "Imaging on", hint: "today, -3, 14 nov" }, context),
    imagingWords: lineField({ label: "Imaging in words", hint: "3 cm, CT" }),
    antibioticsUntil: antibioticsField({ label: "Antibiotics until", hint: "14 nov, +5, none" }, context),
    toldBy: lineField({ label: "Told by", hint: "blank: found here" }),
    when: whenField({ label: "So at", initial: "now", hint: WHEN_HINT }, context),
    whiteCells: measureField("whiteCells", { label: "White cells", detail: true }),
    crp: measureField("crp", { label: "CRP", hint: "or with mg/dL", detail: true }),
    creatinine: measureField("creatinine", { label: "Creatinine", hint: "or with mg/dL", detail: true }),
    bilirubin: measureField("bilirubin", { label: "Bilirubin", hint: "or with mg/dL", detail: true }),
    sodium: measureField("sodium", { label: "Sodium", detail: true }),
    potassium: measureField("potassium", { label: "Potassium", detail: true }),
    culture: textFactField({ label: "Culture", hint: "what grew, no growth, awaited", detail: true }),
    voidedVolume: measureField("voidedVolume", { label: "Voided", hint: "or with L", detail: true }),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: ({ toldBy, when, note, ...typed }) => {
    const { imagingWords, ...facts } = typed;
    const said = imagingWords !== null || Object.values(facts).some((fact) => fact !== undefined);
    return said ? filmRefusals(typed) : [{ code: "nothing-said", field: "temperature" }];
  },
  entry: ({ toldBy, when, note, imaging, imagingOn, imagingWords, ...typed }) => {
    const findings = { ...typed, imaging: filmOf({ imaging, imagingOn, imagingWords }) };
    const entry: EntryOf<"clinical state noted"> = {
      kind: "clinical state noted",
      ...when,
      payload: { findings: saidOf(findings, toldBy !== null), ...(toldBy !== null && { toldBy }), note },
    };
    return entry;
  },
});
