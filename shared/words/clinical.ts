import type { FindingName, Findings, Imaging, Measured } from "#shared/clinical/findings-schema.ts";
import { type MeasureName, measureOf } from "#shared/clinical/measures.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { type Telling, toldFact } from "#shared/words/facts.ts";

/** What each finding is called, inside a sentence. */
export const findingNames = {
  temperature: "temperature",
  chills: "shaking chills",
  feels: "feels",
  pain: "pain",
  jaundice: "jaundice",
  coughOrBreathlessness: "cough or breathlessness",
  imaging: "imaging",
  antibioticsUntil: "antibiotics",
  whiteCells: "white cells",
  crp: "CRP",
  creatinine: "creatinine",
  bilirubin: "bilirubin",
  sodium: "sodium",
  potassium: "potassium",
  culture: "culture",
  voidedVolume: "voided volume",
} as const satisfies Record<FindingName, string>;

/** "38 °C", and what it was converted from: "38 °C, typed 100.4 F". */
export const printMeasure = (name: MeasureName, { value, asTyped }: Measured): string =>
  `${value} ${measureOf(name).unit}${asTyped === null ? "" : `, typed ${asTyped}`}`;

export const printImaging = ({ on, finding, words }: Imaging): string =>
  [printDay(on), ...(finding === "other" ? [] : [finding]), ...(words === null ? [] : [words])].join(", ");

const yesOrNo = (yes: boolean): string => (yes ? "yes" : "no");
const measure =
  (name: MeasureName) =>
  (measured: Measured): string =>
    printMeasure(name, measured);

type ValueOf<K extends FindingName> = Extract<NonNullable<Findings[K]>, { readonly value: unknown }>["value"];

const prints: { readonly [K in FindingName]: (value: ValueOf<K>) => string } = {
  temperature: measure("temperature"),
  chills: yesOrNo,
  feels: (feeling) => feeling,
  pain: measure("pain"),
  jaundice: yesOrNo,
  coughOrBreathlessness: yesOrNo,
  imaging: printImaging,
  antibioticsUntil: (until) => (until === "none" ? until : `until ${printDay(until)}`),
  whiteCells: measure("whiteCells"),
  crp: measure("crp"),
  creatinine: measure("creatinine"),
  bilirubin: measure("bilirubin"),
  sodium: measure("sodium"),
  potassium: measure("potassium"),
  culture: (words) => words,
  voidedVolume: measure("voidedVolume"),
};

/** "temperature 38.1 °C (reported)", "imaging unknown": one finding by its name. */
export function findingPhrase<K extends FindingName>(
  name: K,
  fact: NonNullable<Findings[K]>,
  telling: Telling,
): string {
  const what = findingNames[name];
  const print = (value: ValueOf<K>): string => `${what} ${prints[name](value)}`;
  return toldFact(fact as Fact<ValueOf<K>>, { what, print, telling });
}

/** Every finding that was spoken of, in the order of the form. */
export const findingPhrases = (findings: Findings): readonly string[] =>
  (Object.keys(findingNames) as FindingName[]).flatMap((name) => {
    const fact = findings[name];
    return fact === undefined ? [] : [findingPhrase(name, fact, "plain")];
  });
