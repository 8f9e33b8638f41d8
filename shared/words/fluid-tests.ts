import { printWhen } from "#shared/day/print-day.ts";
import { type Analyte, unitsOf } from "#shared/review/analyte.ts";
import { type Concentration, inOwnUnit } from "#shared/review/concentration.ts";
import { type Definition, definitionOf } from "#shared/review/definitions.ts";
import type { FluidAnswer, Missing } from "#shared/review/fluid-ratio.ts";
import type { FluidResult, TestValue } from "#shared/review/fluid-test-schema.ts";
import { printTimes } from "#shared/review/print-times.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import { type Telling, toldFact } from "#shared/words/facts.ts";
import { sentence, toldBy } from "#shared/words/sentence.ts";

const HUNDREDTH = 100;

/** "85.52 umol/L": to a hundredth, which no laboratory passes in these units. */
export const printConcentration = (level: Concentration, analyte: Analyte): string =>
  `${Math.round(inOwnUnit(level) * HUNDREDTH) / HUNDREDTH} ${unitsOf(analyte).own}`;

/** "85.52 umol/L, typed 5 mg/dL"; where nobody told the unit, "34 ?, unit unknown". */
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

/** The number of times that a definition speaks of; one that compares a value by itself has none to keep away from. */
const timesOf = (definition: Definition): number => (definition.compares === "itself" ? 0 : definition.times);

/** "3.4 times serum", "1.3 mmol/L in the fluid", "cannot tell: the serum value is of another day". */
export function fluidAnswerWords(answer: FluidAnswer, analyte: Analyte): string {
  switch (answer.kind) {
    case "cannot tell":
      return `cannot tell: ${valueWords[answer.missing.of]} ${missingWords[answer.missing.why]}`;
    case "level":
      return toldFact(answer.level, {
        what: "level",
        print: (level) => `${printConcentration(level, analyte)} in the fluid`,
        telling: "marked",
      });
    case "ratio": {
      const beside = timesOf(definitionOf(analyte));
      return toldFact(answer.ratio, {
        what: "ratio",
        print: (ratio) => `${printTimes(ratio, beside)} times ${comparedWith[answer.to]}`,
        telling: "marked",
      });
    }
  }
}

const timesWords = (times: number): string => (times === 1 ? "1 time" : `${times} times`);

function limitWords(definition: Definition): string {
  const limit = definition.compares === "itself" ? definition.words : timesWords(definition.times);
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
  return `the published ${called} (${marked}) is ${limitWords(definition)}${besides}`;
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
