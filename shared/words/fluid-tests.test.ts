import { describe, expect, it } from "vitest";
import { concentration } from "#shared/review/concentration.ts";
import { fluidAnswer } from "#shared/review/fluid-ratio.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { fluidResult, fluidTest, found, withoutUnit } from "#tests/factories/fluid-test.ts";
import * as make from "#tests/support/factories.ts";
import { storySentence } from "./events.ts";
import { fluidAnswerWords, publishedWords } from "./fluid-tests.ts";

const amylase = { analyte: "amylase", serum: null, fluid: found(4200), upperLimit: found(100) } as const;
const estimated = { certainty: "estimated", value: { level: concentration(85), asTyped: null } } as const;
const reported = { certainty: "reported", value: { level: concentration(85), asTyped: null } } as const;

describe("the answer stands before what was published", () => {
  const wordsOf = (said: Parameters<typeof fluidTest>[0]): string => {
    const test = fluidTest(said);
    return fluidAnswerWords(fluidAnswer(test), test.analyte);
  };

  it("as one sentence", () => {
    expect(`${wordsOf({})}; ${publishedWords("bilirubin")}`).toBe(
      "3.4 times serum; the published definition of a bile leak (ISGLS, Koch et al., Surgery 2011;149:680) is 3 times or more on or after day 3 after surgery, or bile outside that needed an intervention",
    );
  });

  it.each([
    [{ fluid: estimated }, "about 3.4 times serum"],
    [{ fluid: reported }, "3.4 times serum (reported)"],
    [{ fluid: found(74.999) }, "just under 3 times serum"],
    [amylase, "42 times the upper limit of the serum range"],
    [{ analyte: "triglyceride", fluid: found(1.3) }, "1.3 mmol/L in the fluid"],
    [{ serum: null }, "cannot tell: the serum value is not recorded"],
    [{ serumOn: make.when("2026-08-13") }, "cannot tell: the serum value is of another day"],
    [{ serumOn: make.when("2026-08") }, "cannot tell: the serum value may be of another day"],
    [{ serum: found(0) }, "cannot tell: the serum value is zero"],
    [{ fluid: unknownFact }, "cannot tell: the value in the fluid is unknown"],
    [{ fluid: withoutUnit(5) }, "cannot tell: the value in the fluid has no unit"],
    [
      { ...amylase, upperLimit: null },
      "cannot tell: the upper limit of the laboratory's serum range is not recorded",
    ],
  ] as const)("%#: %s", (said, words) => {
    expect(wordsOf(said)).toBe(words);
  });

  it("and never concludes, however large it is", () => {
    const said = [{ fluid: found(90_000) }, { ...amylase, fluid: found(900_000) }].map(wordsOf).join(" ");
    expect(said).not.toMatch(/leak|fistula|chyle|urine|met|positive/i);
  });
});

describe("in the story", () => {
  const told: readonly (readonly [make.Entry, string])[] = [
    [make.fluidTested(), "Fluid tested: bilirubin 85 umol/L (serum 25 umol/L)."],
    [
      make.fluidTested({
        results: [fluidResult(amylase), fluidResult({ fluid: withoutUnit(5), serum: unknownFact })],
        note: "Cloudy.",
      }),
      "Fluid tested: amylase 4200 U/L (upper limit 100 U/L), bilirubin 5, unit unknown (serum value unknown). Cloudy.",
    ],
    [
      make.fluidTested({
        results: [fluidResult({ fluid: reported })],
        serumOn: make.when("2026-08-13"),
        toldBy: "the ward",
      }),
      "Fluid tested: bilirubin 85 umol/L (serum 25 umol/L), serum taken Thu 13 Aug 2026, told by the ward.",
    ],
    [
      make.fluidTested({
        results: [
          fluidResult({
            fluid: { certainty: "confirmed", value: { level: concentration(85.52), asTyped: "5 mg/dL" } },
            serum: null,
          }),
        ],
      }),
      "Fluid tested: bilirubin 85.52 umol/L, typed 5 mg/dL.",
    ],
  ];

  it.each(told)("%#: %s", (entry, words) => {
    expect(storySentence(entry, () => "")).toBe(words);
  });
});
