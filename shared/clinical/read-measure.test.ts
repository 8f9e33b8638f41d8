import { describe, expect, it } from "vitest";
import { measureField } from "#shared/record/field/measure-field.ts";
import { readField } from "#shared/record/field-spec.ts";
import { findingsSchema } from "./findings-schema.ts";
import { type MeasureName, measureNames, measureOf } from "./measures.ts";
import { readMeasure } from "./read-measure.ts";

const figure = (value: number, asTyped: string | null = null) => ({
  ok: true,
  value: { certainty: "confirmed", value: { value, asTyped } },
});

describe("a measured figure as it is typed", () => {
  it.each<[MeasureName, string, number, string | null]>([
    ["temperature", "38.2", 38.2, null],
    ["temperature", "38,2 C", 38.2, null],
    ["temperature", " 37 °c ", 37, null],
    // (100.4 - 32) x 5/9 = 68.4 x 5/9 = 38
    ["temperature", "100.4 F", 38, "100.4 F"],
    // (101.5 - 32) x 5/9 = 38.611...
    ["temperature", "101.5 fahrenheit", 38.61, "101.5 fahrenheit"],
    ["pain", "3", 3, null],
    ["pain", "3/10", 3, null],
    ["whiteCells", "12.5", 12.5, null],
    ["whiteCells", "12500 /uL", 12.5, "12500 /uL"],
    // 14 mg/dL = 140 mg/L
    ["crp", "14 mg/dL", 140, "14 mg/dL"],
    // 1.2 x 88.4 = 106.08; 113.12 g/mol (molar mass of creatinine)
    ["creatinine", "1.2 mg/dl", 106, "1.2 mg/dl"],
    // 2 x 17.1 = 34.2; 584.66 g/mol (molar mass of bilirubin)
    ["bilirubin", "2 mg/dL", 34, "2 mg/dL"],
    ["sodium", "138 mEq/L", 138, null],
    ["potassium", "4.2", 4.2, null],
    ["voidedVolume", "1.5 L", 1500, "1.5 L"],
    ["voidedVolume", "0", 0, null],
  ])("%s %j", (name, text, value, asTyped) => {
    expect(readMeasure(text, name)).toEqual(figure(value, asTyped));
  });

  it("~ is an estimate and ? is unknown", () => {
    expect(readMeasure("~38", "temperature")).toMatchObject({ value: { certainty: "estimated" } });
    expect(readMeasure("?", "crp")).toEqual({ ok: true, value: { certainty: "unknown" } });
  });

  it.each<[MeasureName, string, string]>([
    ["temperature", "", "text-missing"],
    ["temperature", "warm", "measure-not-understood"],
    ["temperature", "38 K", "measure-not-understood"],
    ["crp", "14 umol/L", "measure-not-understood"],
    ["crp", `1${"0".repeat(40)}`, "measure-not-understood"],
    ["crp", "-3", "measure-not-understood"],
    ["voidedVolume", "1,500", "measure-comma-unclear"],
    // A bare number takes the label's unit: Fahrenheit has to be typed.
    ["temperature", "100.4", "measure-outside"],
    ["temperature", "29.9", "measure-outside"],
    ["pain", "11", "measure-outside"],
  ])("%s %j is refused: %s", (name, text, code) => {
    expect(readMeasure(text, name)).toMatchObject({ ok: false, refusal: { code } });
  });

  it.each(measureNames)("%s: its limits hold at, and not one step beyond", (name) => {
    const { least, most, decimals } = measureOf(name);
    const step = 10 ** -decimals;
    for (const at of [least, most]) expect(readMeasure(String(at), name).ok).toBe(true);
    expect(readMeasure((most + step).toFixed(decimals), name).ok).toBe(false);
    const stored = (value: number) =>
      findingsSchema.safeParse({ [name]: { certainty: "confirmed", value: { value, asTyped: null } } })
        .success;
    expect([stored(least), stored(most), stored(least - step), stored(most + step)]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it("asks of a rare figure, blocks nothing and changes nothing", () => {
    const field = measureField("temperature", { label: "Temperature" });
    expect(field.label).toBe("Temperature, °C");
    expect(readField(field, "41")).toEqual({ echo: "41 °C" });
    expect(readField(field, "41.1")).toEqual({ echo: "41.1 °C", doubt: "That is 41.1 °C. Is it meant?" });
    expect(readField(field, "34.9")).toMatchObject({ doubt: "That is 34.9 °C. Is it meant?" });
    expect(readField(field, "100.4 F")).toEqual({ echo: "38 °C, typed 100.4 F" });
    expect(readField(field, "?")).toEqual({ echo: "unknown" });
    expect(readField(field, "")).toEqual({});
  });
});
