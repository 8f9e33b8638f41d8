import { describe, expect, it } from "vitest";
import { confirmed } from "#shared/tube/certainty.ts";
import { fluidTestedSchema } from "./fluid-test-schema.ts";

const value = (level: number | null, asTyped: string | null = null) => confirmed({ level, asTyped });
const bilirubin = { analyte: "bilirubin", fluid: value(5), serum: null, upperLimit: null };
const accepted = (...results: readonly object[]) =>
  fluidTestedSchema.safeParse({ results, serumOn: null, note: null }).success;

describe("a test of the fluid, as it is stored", () => {
  it.each([
    [0, true],
    [5, true],
    [-1, false],
    [0.5, false],
    [Number.MAX_SAFE_INTEGER + 1, false],
  ])("a value of %s billionths: %s", (level, expected) => {
    expect(accepted({ ...bilirubin, fluid: value(level) })).toBe(expected);
  });

  it("without its unit it is what was typed, and never nothing", () => {
    expect(accepted({ ...bilirubin, fluid: value(null, "34 ?") })).toBe(true);
    expect(accepted({ ...bilirubin, fluid: value(5, "5 mg/dL") })).toBe(true);
    expect(accepted({ ...bilirubin, fluid: value(null) })).toBe(false);
  });

  it("only amylase has an upper limit of the laboratory", () => {
    expect(accepted({ ...bilirubin, upperLimit: value(5) })).toBe(false);
    expect(accepted({ ...bilirubin, analyte: "amylase", upperLimit: value(5) })).toBe(true);
    expect(accepted({ ...bilirubin, analyte: "amylase" })).toBe(true);
  });

  it("holds each analyte once, and at least one", () => {
    expect(accepted()).toBe(false);
    expect(accepted(bilirubin, { ...bilirubin, analyte: "creatinine" })).toBe(true);
    expect(accepted(bilirubin, bilirubin)).toBe(false);
  });
});
