import { describe, expect, it } from "vitest";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { analytes, unitsOf } from "./analyte.ts";
import { concentration } from "./concentration.ts";
import { readConcentration, unitDoubt } from "./read-concentration.ts";

const own = (figure: number) => ({ level: concentration(figure), asTyped: null });

describe("a value is read as a report says it", () => {
  it.each([
    ["4200", "amylase", confirmed(own(4200))],
    ["4200 U/L", "amylase", confirmed(own(4200))],
    [" 4200 IU/l ", "amylase", confirmed(own(4200))],
    ["~4000", "amylase", { certainty: "estimated", value: own(4000) }],
    ["0", "bilirubin", confirmed(own(0))],
    ["3,4 µmol/L", "bilirubin", confirmed(own(3.4))],
    ["3.4 μmol/l", "bilirubin", confirmed(own(3.4))],
    ["85.5umol/L", "creatinine", confirmed(own(85.5))],
    ["5 mg/dL", "bilirubin", confirmed({ level: concentration(85.52), asTyped: "5 mg/dL" })],
    [
      "~5 MG/DL",
      "bilirubin",
      { certainty: "estimated", value: { level: concentration(85.52), asTyped: "~5 MG/DL" } },
    ],
    ["212 mg/dl", "triglyceride", confirmed({ level: concentration(2.392632), asTyped: "212 mg/dl" })],
    ["?", "creatinine", unknownFact],
    ["34 ?", "bilirubin", confirmed({ level: null, asTyped: "34 ?" })],
    ["34?", "bilirubin", confirmed({ level: null, asTyped: "34?" })],
  ] as const)("%j of %s", (text, analyte, value) => {
    expect(readConcentration(text, analyte)).toEqual({ ok: true, value });
  });
});

describe("what is refused says what to mend", () => {
  it.each([
    ["high", "amylase", "measure-not-understood"],
    ["4200 mg/dL", "amylase", "measure-not-understood"],
    ["-5", "bilirubin", "measure-not-understood"],
    ["5 g/L", "bilirubin", "measure-not-understood"],
    ["5 mmol/L", "bilirubin", "measure-not-understood"],
    ["5.1234 mg/dL", "bilirubin", "measure-not-understood"],
    [">5000", "amylase", "measure-not-understood"],
    [`4${" ".repeat(50)}U/L`, "amylase", "measure-not-understood"],
    ["4,200", "amylase", "measure-comma-unclear"],
    ["1,200 umol/L", "creatinine", "measure-comma-unclear"],
  ] as const)("%j of %s: %s", (text, analyte, code) => {
    const read = readConcentration(text, analyte);
    expect(read).toMatchObject({ ok: false, refusal: { code } });
    expect(!read.ok && refusalSentence(read.refusal)).toMatch(/Type a (?:number in|point)/);
  });

  it("with what was typed, at most 40 letters of it, and the unit of the analyte", () => {
    const refused = (text: string, analyte: (typeof analytes)[number]) => {
      const read = readConcentration(text, analyte);
      return read.ok ? null : read.refusal;
    };
    expect(refused(" high ", "bilirubin")).toEqual({
      code: "measure-not-understood",
      args: { text: "high", unit: "umol/L" },
    });
    expect(refused("high", "amylase")).toMatchObject({ args: { text: "high", unit: "U/L" } });
    expect(refused("9".repeat(41), "amylase")).toEqual({
      code: "measure-not-understood",
      args: { text: "9".repeat(40), unit: "U/L" },
    });
    expect(refused(" 4,200 ", "amylase")).toEqual({ code: "measure-comma-unclear", args: { text: "4,200" } });
  });

  it.each(analytes)("%s over its most: the most is read, a thousandth more is not", (analyte) => {
    const { most, own: unit } = unitsOf(analyte);
    expect(readConcentration(`${most}`, analyte)).toMatchObject({ ok: true });
    expect(readConcentration(`${most}.001`, analyte)).toEqual({
      ok: false,
      refusal: { code: "measure-outside", args: { text: `${most}.001`, least: 0, most, unit } },
    });
  });
});

describe("a number alone that may have been meant in mg/dL is asked about", () => {
  const doubtOf = (text: string, analyte: (typeof analytes)[number]) => {
    const read = readConcentration(text, analyte);
    return unitDoubt(read.ok ? read.value : undefined, { text, analyte });
  };

  it.each([
    ["1.999", "bilirubin", "Without a unit that is 1.999 umol/L. Type the unit if it is mg/dL."],
    ["2", "bilirubin", null],
    ["19.999", "creatinine", "Without a unit that is 19.999 umol/L. Type the unit if it is mg/dL."],
    ["20", "creatinine", null],
    ["30", "triglyceride", null],
    ["30.001", "triglyceride", "Without a unit that is 30.001 mmol/L. Type the unit if it is mg/dL."],
    ["0", "amylase", null],
    ["1.2 mg/dL", "bilirubin", null],
    ["1.2 umol/L", "bilirubin", null],
    ["1.2 ?", "bilirubin", null],
    ["?", "bilirubin", null],
  ] as const)("%j of %s: %s", (text, analyte, doubt) => {
    expect(doubtOf(text, analyte)).toBe(doubt);
  });

  it("and a blank is not", () => {
    expect(unitDoubt(undefined, { text: "", analyte: "bilirubin" })).toBeNull();
  });
});
