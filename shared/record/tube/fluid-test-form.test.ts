import { describe, expect, it } from "vitest";
import type { Texts } from "#shared/record/field-spec.ts";
import { concentration } from "#shared/review/concentration.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { payloads } from "#shared/tube/payloads.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { when } from "#tests/support/factories.ts";
import { fluidTestForm } from "./fluid-test-form.ts";

const context = formContext();
const own = (figure: number) => ({ level: concentration(figure), asTyped: null });
const none = { serum: null, upperLimit: null };

describe("what the laboratory found is typed", () => {
  const examples: readonly (readonly [Texts, object])[] = [
    [
      { amylase: "4200", amylaseLimit: "100", bilirubin: "5 mg/dL", bilirubinSerum: "1.5 mg/dL" },
      {
        results: [
          { analyte: "amylase", fluid: confirmed(own(4200)), serum: null, upperLimit: confirmed(own(100)) },
          {
            analyte: "bilirubin",
            fluid: confirmed({ level: concentration(85.52), asTyped: "5 mg/dL" }),
            serum: confirmed({ level: concentration(25.656), asTyped: "1.5 mg/dL" }),
            upperLimit: null,
          },
        ],
        serumOn: null,
        note: null,
      },
    ],
    [
      {
        creatinine: "~900",
        creatinineSerum: "90",
        serumOn: "yesterday",
        toldBy: "the ward",
        note: "by telephone",
      },
      {
        results: [
          {
            analyte: "creatinine",
            fluid: { certainty: "estimated", value: own(900) },
            serum: { certainty: "reported", value: own(90) },
            upperLimit: null,
          },
        ],
        serumOn: when("2026-11-05"),
        toldBy: "the ward",
        note: "by telephone",
      },
    ],
    [
      { triglyceride: "?" },
      { results: [{ analyte: "triglyceride", fluid: unknownFact, ...none }], serumOn: null, note: null },
    ],
  ];

  it.each(examples)("%j", (texts, payload) => {
    const read = fluidTestForm.read(texts, context);
    const today = { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" };
    expect(read).toEqual({ ok: true, entry: { kind: "fluid tested", when: today, time: null, payload } });
    expect(payloads["fluid tested"].parse(payload)).toEqual(payload);
  });
});

describe("what is to mend stands beside its field", () => {
  it.each([
    [{}, "amylase", "Type what was found in the fluid, here or below."],
    [{ note: "cloudy" }, "amylase", "Type what was found in the fluid, here or below."],
    [{ bilirubinSerum: "25" }, "bilirubin", "Type the bilirubin in the fluid; ? if unknown."],
    [{ amylaseLimit: "100" }, "amylase", "Type the amylase in the fluid; ? if unknown."],
    [
      { bilirubin: "high" },
      "bilirubin",
      '"high" is not understood here. Type a number in umol/L, another with its unit, ~ before an estimate, or ? for unknown.',
    ],
    [{ amylase: "4,200" }, "amylase", '"4,200" can be read two ways. Type a point, or no sign at all.'],
    [
      { creatinine: "900", creatinineSerum: "100001" },
      "creatinineSerum",
      '"100001" is not between 0 and 100000 umol/L. Check the number, and type its unit if it is another.',
    ],
  ] as const)("%j: %s", (texts, field, sentence) => {
    const read = fluidTestForm.read(texts, context);
    const said = read.ok ? [] : read.refusals.map((refusal) => [refusal.field, refusalSentence(refusal)]);
    expect(said).toEqual([[field, sentence]]);
  });

  it("a fluid that will be taken tomorrow is refused", () => {
    const read = fluidTestForm.read({ bilirubin: "85", when: "+1" }, context);
    expect(read).toMatchObject({ ok: false, refusals: [{ field: "when" }] });
  });
});

describe("a field is asked where another asks for it", () => {
  const fields = fluidTestForm.fields(context);
  const asked = (texts: Texts): string[] =>
    Object.entries(fields).flatMap(([name, spec]) =>
      ("belongs" in spec ? spec.belongs?.(texts) : true) ? [name] : [],
    );

  it("four values at first, what stands beside one once it is typed", () => {
    const last = ["when", "toldBy", "note"];
    expect(asked({})).toEqual(["amylase", "bilirubin", "creatinine", "triglyceride", ...last]);
    expect(asked({ amylase: "4200" }).slice(0, 4)).toEqual([
      "amylase",
      "amylaseLimit",
      "amylaseSerum",
      "bilirubin",
    ]);
    expect(asked({ bilirubin: "85" })).not.toContain("serumOn");
    expect(asked({ bilirubin: "85", bilirubinSerum: "25" })).toContain("serumOn");
    expect(asked({ bilirubin: " " })).not.toContain("bilirubinSerum");
  });

  it("and each label names its unit", () => {
    expect(fields.bilirubin.label).toBe("Bilirubin in the fluid, umol/L");
    expect(fields.triglycerideSerum.label).toBe("Triglyceride in serum, mmol/L");
    expect(fields.amylaseLimit.label).toBe("Upper limit of the laboratory's serum range, amylase, U/L");
  });
});

describe("a payload that no form makes is refused", () => {
  const result = { analyte: "bilirubin", fluid: confirmed(own(85)), ...none };
  const payload = { results: [result], serumOn: null, note: null };

  it.each([
    ["of nothing", { ...payload, results: [] }],
    ["of one analyte twice", { ...payload, results: [result, result] }],
    [
      "with an upper limit for bilirubin",
      { ...payload, results: [{ ...result, upperLimit: confirmed(own(20)) }] },
    ],
    [
      "with a value of nothing at all",
      { ...payload, results: [{ ...result, fluid: confirmed({ level: null, asTyped: null }) }] },
    ],
    [
      "with a part of a billionth",
      { ...payload, results: [{ ...result, fluid: confirmed({ level: 0.5, asTyped: null }) }] },
    ],
    ["below zero", { ...payload, results: [{ ...result, fluid: confirmed({ level: -1, asTyped: null }) }] }],
  ])("%s", (_name, said) => {
    expect(payloads["fluid tested"].safeParse(payload).success).toBe(true);
    expect(payloads["fluid tested"].safeParse(said).success).toBe(false);
  });
});
