import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { onDay, whenUnknown } from "#shared/day/when.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { publishedWords } from "#shared/words/fluid-tests.ts";
import { fluidTest, found, withoutUnit } from "#tests/factories/fluid-test.ts";
import { when } from "#tests/support/factories.ts";
import { analytes } from "./analyte.ts";
import { type Concentration, concentration } from "./concentration.ts";
import { definitions } from "./definitions.ts";
import { fluidAnswer } from "./fluid-ratio.ts";
import { printLevelBeside, printTimes } from "./print-beside.ts";
import { readConcentration } from "./read-concentration.ts";

const ratio = (over: number, under: number) => ({ over: concentration(over), under: concentration(under) });

describe("the value in the fluid beside what its definition compares it with", () => {
  it("bilirubin: serum of the same day", () => {
    expect(fluidAnswer(fluidTest())).toEqual({
      kind: "ratio",
      to: "serum",
      beside: 3,
      ratio: confirmed(ratio(85, 25)),
    });
  });

  it("creatinine: serum of the same day", () => {
    const test = fluidTest({ analyte: "creatinine", fluid: found(900), serum: found(90) });
    expect(fluidAnswer(test)).toEqual({
      kind: "ratio",
      to: "serum",
      beside: 1,
      ratio: confirmed(ratio(900, 90)),
    });
  });

  it("amylase: the laboratory's upper limit, whatever serum says", () => {
    const test = fluidTest({ analyte: "amylase", fluid: found(4200), serum: null, upperLimit: found(100) });
    const answer = { kind: "ratio", to: "upper limit", beside: 3, ratio: confirmed(ratio(4200, 100)) };
    expect(fluidAnswer(test)).toEqual(answer);
    expect(fluidAnswer({ ...test, serum: found(60), serumOn: onDay(day("2026-08-13")) })).toEqual(answer);
  });

  it("triglyceride: itself, with or without serum", () => {
    const test = fluidTest({ analyte: "triglyceride", fluid: found(1.3), serum: null });
    const answer = { kind: "level", beside: 1_241_460_000, level: confirmed(concentration(1.3)) };
    expect(fluidAnswer(test)).toEqual(answer);
    expect(fluidAnswer({ ...test, serum: found(0.9) })).toEqual(answer);
  });

  it("nothing in the fluid is a ratio of nothing", () => {
    expect(fluidAnswer(fluidTest({ fluid: found(0) }))).toMatchObject({ ratio: confirmed(ratio(0, 25)) });
  });
});

describe("what is missing is named, the first of it", () => {
  const amylase = { analyte: "amylase", serum: found(60) } as const;
  it.each([
    ["the fluid unknown", { fluid: unknownFact, serum: null }, { of: "fluid", why: "unknown" }],
    ["the fluid without a unit", { fluid: withoutUnit(5) }, { of: "fluid", why: "unit unknown" }],
    ["no serum", { serum: null }, { of: "serum", why: "not recorded" }],
    ["serum unknown", { serum: unknownFact }, { of: "serum", why: "unknown" }],
    ["serum without a unit", { serum: withoutUnit(25) }, { of: "serum", why: "unit unknown" }],
    ["serum of nothing", { serum: found(0) }, { of: "serum", why: "zero" }],
    ["serum a day before", { serumOn: when("2026-08-13") }, { of: "serum", why: "another day" }],
    ["serum a day after", { serumOn: when("2026-08-15") }, { of: "serum", why: "another day" }],
    ["serum some time that month", { serumOn: when("2026-08") }, { of: "serum", why: "day unknown" }],
    ["serum of a month before", { serumOn: when("2026-07") }, { of: "serum", why: "another day" }],
    ["serum nobody knows when", { serumOn: whenUnknown }, { of: "serum", why: "day unknown" }],
    [
      "a fluid nobody knows when",
      { when: whenUnknown, serumOn: when("2026-08-14") },
      { of: "serum", why: "day unknown" },
    ],
    [
      "both in one month",
      { when: when("2026-08"), serumOn: when("2026-08") },
      { of: "serum", why: "day unknown" },
    ],
    ["no upper limit", { ...amylase, upperLimit: null }, { of: "upper limit", why: "not recorded" }],
    [
      "an unknown upper limit",
      { ...amylase, upperLimit: unknownFact },
      { of: "upper limit", why: "unknown" },
    ],
    [
      "an upper limit without a unit",
      { ...amylase, upperLimit: withoutUnit(100) },
      { of: "upper limit", why: "unit unknown" },
    ],
    ["an upper limit of nothing", { ...amylase, upperLimit: found(0) }, { of: "upper limit", why: "zero" }],
    [
      "triglyceride unknown",
      { analyte: "triglyceride", fluid: unknownFact },
      { of: "fluid", why: "unknown" },
    ],
  ] as const)("%s", (_name, said, missing) => {
    expect(fluidAnswer(fluidTest(said))).toEqual({ kind: "cannot tell", missing });
  });

  it("and what is said to be of the same day is a pair, whichever day that was", () => {
    expect(fluidAnswer(fluidTest({ serumOn: when("2026-08-14") }))).toMatchObject({ kind: "ratio" });
    expect(fluidAnswer(fluidTest({ when: whenUnknown, serumOn: null }))).toMatchObject({ kind: "ratio" });
  });
});

describe("how well it is known", () => {
  const known = (certainty: "confirmed" | "reported" | "estimated", figure: number) =>
    ({ certainty, value: { level: concentration(figure), asTyped: null } }) as const;

  it.each([
    ["confirmed", "confirmed", "confirmed"],
    ["confirmed", "reported", "reported"],
    ["reported", "confirmed", "reported"],
    ["reported", "estimated", "estimated"],
    ["estimated", "confirmed", "estimated"],
  ] as const)("%s over %s is %s", (one, other, both) => {
    const test = fluidTest({ fluid: known(one, 85), serum: known(other, 25) });
    expect(fluidAnswer(test)).toMatchObject({ ratio: { certainty: both } });
  });

  it("a level by itself keeps its own", () => {
    const test = fluidTest({ analyte: "triglyceride", fluid: known("reported", 1.3) });
    expect(fluidAnswer(test)).toMatchObject({ level: { certainty: "reported" } });
  });
});

describe("the number of times, beside the published one", () => {
  const least = 1e-9;
  it.each([
    // 3 times the upper limit or serum: ISGPS 2016 and ISGLS. One billionth under, at, over.
    [75 - least, 25, 3, "just under 3"],
    [75, 25, 3, "3"],
    [75 + least, 25, 3, "just over 3"],
    [74, 25, 3, "just under 3"],
    [73.75, 25, 3, "just under 3"],
    [73.7, 25, 3, "2.9"],
    [76.2, 25, 3, "just over 3"],
    [76.25, 25, 3, "3.1"],
    [85, 25, 3, "3.4"],
    // 1 time serum: Stark et al., 1982.
    [89, 90, 1, "just under 1"],
    [90, 90, 1, "1"],
    [91, 90, 1, "just over 1"],
    [248.75, 25, 3, "10"],
    [4240, 100, 3, "42"],
    [1, 25, 3, "under 0.1"],
    [0, 25, 3, "0"],
  ])("%d over %d beside %d: %s", (over, under, beside, printed) => {
    const exact = { over: Math.round(over * 1e9) as Concentration, under: concentration(under) };
    expect(printTimes(exact, beside)).toBe(printed);
  });
});

describe("what was published", () => {
  it("is written with its source, and what is from memory", () => {
    expect(analytes.map(publishedWords)).toEqual([
      "the published definition of a pancreatic fistula after surgery (ISGPS 2016, Bassi et al., Surgery 2017;161:584; the day from memory) is over 3 times on or after day 3 after surgery, with a condition that comes of it",
      "the published definition of a bile leak (ISGLS, Koch et al., Surgery 2011;149:680) is 3 times or more on or after day 3 after surgery, or bile outside that needed an intervention",
      "the published limit for urine in pleural fluid (Stark et al., Arch Intern Med 1982;142:1509; from memory) is over the serum value, a ratio of 1; in any other fluid that is common practice, without a source",
      "the published limit for chyle in pleural fluid (Staats et al., Mayo Clin Proc 1980;55:700) is over 110 mg/dL (1.241 mmol/L), and open from 50 mg/dL (0.564 mmol/L) on",
    ]);
  });

  // Staats et al., 1980: over 110 mg/dL, which is 1.24146 mmol/L; one unit below, at, above in each unit of entry.
  it.each([
    ["109 mg/dL", "1.23 mmol/L"],
    ["109.999 mg/dL", "just under 1.241 mmol/L"],
    ["110 mg/dL", "1.241 mmol/L"],
    ["110.001 mg/dL", "just over 1.241 mmol/L"],
    ["111 mg/dL", "1.253 mmol/L"],
    ["1.24 mmol/L", "1.24 mmol/L"],
    ["1.241 mmol/L", "just under 1.241 mmol/L"],
    ["1.242 mmol/L", "1.242 mmol/L"],
  ])("chyle: %s is %s beside it", (typed, printed) => {
    const read = readConcentration(typed, "triglyceride");
    const level = read.ok && read.value.certainty !== "unknown" ? read.value.value.level : null;
    expect(printLevelBeside(level!, definitions.triglyceride.level, "triglyceride")).toBe(printed);
  });
});

describe("laws", () => {
  const figure = fc.integer({ min: 1, max: 50_000 });

  it("one factor over both keeps the ratio", () => {
    fc.assert(
      fc.property(figure, figure, fc.integer({ min: 1, max: 100 }), (over, under, factor) => {
        const [plain, scaled] = [ratio(over, under), ratio(over * factor, under * factor)];
        for (const beside of [1, 3]) expect(printTimes(scaled, beside)).toBe(printTimes(plain, beside));
      }),
    );
  });

  it("the unit of entry changes no ratio", () => {
    const analyte = fc.constantFrom("bilirubin", "creatinine" as const);
    fc.assert(
      fc.property(
        analyte,
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 900 }),
        (of, over, under) => {
          const typed = (unit: string) => {
            const [fluid, serum] = [over, under].map((value) => readConcentration(`${value} ${unit}`, of));
            if (!fluid?.ok || !serum?.ok) throw new Error("not read");
            const answer = fluidAnswer(fluidTest({ analyte: of, fluid: fluid.value, serum: serum.value }));
            if (answer.kind !== "ratio") throw new Error(answer.kind);
            return printTimes(answer.ratio.value, answer.beside);
          };
          expect(typed("mg/dL")).toBe(typed("umol/L"));
        },
      ),
    );
  });

  it("more in the fluid is never fewer times, more in serum never more", () => {
    fc.assert(
      fc.property(figure, figure, figure, (over, under, more) => {
        const times = (one: number, other: number): number => {
          const printed = printTimes(ratio(one, other), 7e9);
          return printed === "under 0.1" ? 0.05 : Number(printed);
        };
        expect(times(over + more, under)).toBeGreaterThanOrEqual(times(over, under));
        expect(times(over, under + more)).toBeLessThanOrEqual(times(over, under));
      }),
    );
  });
});
