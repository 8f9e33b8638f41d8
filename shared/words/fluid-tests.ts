import { printWhen } from "#shared/day/print-day.ts";
import type { Analyte } from "#shared/review/analyte.ts";
import { type Definition, definitionOf } from "#shared/review/definitions.ts";
import type { FluidAnswer, Missing } from "#shared/review/fluid-ratio.ts";
import type { FluidResult, TestValue } from "#shared/review/fluid-test-schema.ts";
import { printConcentration, printLevelBeside, printTimes } from "#shared/review/print-beside.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { type Telling, toldFact } from "#shared/words/facts.ts";
import { sentence, toldBy } from "#shared/words/sentence.ts";

/** "85.52 umol/L, typed 5 mg/dL"; where nobody told the unit, "34, unit unknown". */
export function printTestValue({ level, asTyped }: TestValue, analyte: Analyte): string {
  if (level === null) return `${(asTyped ?? "").replace(/\s*\?$/, "")}, unit unknown`;
  return `${printConcentration(level, analyte)}${asTyped === null ? "" : `, typed ${asTyped}`}`;
}

const missingWords = {
  "not recorded": "is not recorded",
  unknown: "is unknown",
  "unit unknown": "has no unit",
  zero: "is zero",
  "another day": "is of another day",
  "day unknown": "may be of another day",
} as const satisfies Record<Missing["why"], string>;

const valueWords = {
  fluid: "the value in the fluid",
  serum: "the serum value",
  "upper limit": "the upper limit of the laboratory's serum range",
} as const satisfies Record<Missing["of"], string>;

const comparedWith = { serum: "serum", "upper limit": "the upper limit of the serum range" } as const;

/** "3.4 times serum", "1.3 mmol/L in the fluid", "cannot tell: the serum value is of another day". */
export function fluidAnswerWords(answer: FluidAnswer, analyte: Analyte): string {
  switch (answer.kind) {
    case "cannot tell":
      return `cannot tell: ${valueWords[answer.missing.of]} ${missingWords[answer.missing.why]}`;
    case "level":
      return toldFact(answer.level, {
        what: "level",
        print: (level) => `${printLevelBeside(level, answer.beside, analyte)} in the fluid`,
        telling: "marked",
      });
    case "ratio":
      return toldFact(answer.ratio, {
        what: "ratio",
        print: (ratio) => `${printTimes(ratio, answer.beside)} times ${comparedWith[answer.to]}`,
        telling: "marked",
      });
  }
}

const timesWords = (times: number): string =>
  times === 1 ? "the serum value, a ratio of 1" : `${times} times`;

function limitWords(definition: Definition, analyte: Analyte): string {
  const limit =
    definition.compares === "itself"
      ? `${definition.words} (${printConcentration(definition.level, analyte)})`
      : timesWords(definition.times);
  return definition.bound === "over" ? `over ${limit}` : `${limit} or more`;
}

/**
 * What was published, to stand behind the answer: "the published definition of a bile leak (ISGLS, Koch et al., Surgery 2011;149:680) is 3 times
 * or more on or after day 3 after surgery". What was not read in the source for this is marked.
 */
export function publishedWords(analyte: Analyte): string {
  const definition = definitionOf(analyte);
  const { called, source, fromMemory, besides } = definition;
  const marked = fromMemory === null ? source : `${source}; ${fromMemory}`;
  return `the published ${called} (${marked}) is ${limitWords(definition, analyte)}${besides}`;
}

const values = { fluid: "", serum: "serum ", upperLimit: "upper limit " } as const;

/** "amylase 4200 U/L (serum 60 U/L, upper limit 100 U/L)". */
function resultPhrase(result: FluidResult, telling: Telling): string {
  const { analyte } = result;
  const [fluid = "", ...beside] = (["fluid", "serum", "upperLimit"] as const).flatMap((name) => {
    const fact = result[name];
    const what = `${values[name]}value`;
    return fact === null
      ? []
      : [
          toldFact(fact, {
            what,
            print: (value) => `${values[name]}${printTestValue(value, analyte)}`,
            telling,
          }),
        ];
  });
  return `${analyte} ${fluid}${beside.length === 0 ? "" : ` (${beside.join(", ")})`}`;
}

/** What the laboratory found, as the story tells it. */
export function fluidTested({ results, serumOn, toldBy: who, note }: Payload<"fluid tested">): string {
  const telling = who === undefined ? "marked" : "plain";
  return sentence(
    "Fluid tested",
    [
      ...results.map((result) => resultPhrase(result, telling)),
      serumOn !== null && `serum taken ${printWhen(serumOn)}`,
      toldBy(who),
    ],
    note,
  );
}
