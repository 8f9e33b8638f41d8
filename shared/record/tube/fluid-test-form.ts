import type { Refusal } from "#shared/errors/refusal.ts";
import { concentrationField } from "#shared/record/field/concentration-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { optionalWhenField, whenField } from "#shared/record/field/when-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { type Analyte, analytes } from "#shared/review/analyte.ts";
import type { FluidResult, TestValue } from "#shared/review/fluid-test-schema.ts";
import type { Fact } from "#shared/tube/certainty.ts";

type Typed = Fact<TestValue> | undefined;
/** What was typed of the analytes: in the fluid by its name, beside it in serum and, for amylase, the laboratory's limit. */
type Values = Readonly<Record<Analyte | SerumName, Typed>> & { readonly amylaseLimit: Typed };
type SerumName = `${Analyte}Serum`;

const serumName = (analyte: Analyte): SerumName => `${analyte}Serum`;
const isTyped = (text: string | undefined): boolean => (text ?? "").trim() !== "";

const titled = (analyte: Analyte): string => `${analyte[0]?.toUpperCase()}${analyte.slice(1)}`;

const fluidField = (analyte: Analyte, hint: string) =>
  concentrationField(analyte, { label: `${titled(analyte)} in the fluid`, hint });

/** What stands beside a value in the fluid is asked once that is typed. */
const besideField = (analyte: Analyte, label: string) =>
  concentrationField(analyte, { label, belongs: (texts: Texts) => isTyped(texts[analyte]) });

const serumField = (analyte: Analyte) => besideField(analyte, `${titled(analyte)} in serum`);

const hasSerum = (texts: Texts): boolean => analytes.some((analyte) => isTyped(texts[serumName(analyte)]));

/** Each analyte of which anything was typed; its value in the fluid may be lacking, which the check says. */
const analytesTyped = (values: Values): readonly Analyte[] =>
  analytes.filter(
    (analyte) =>
      values[analyte] ??
      values[serumName(analyte)] ??
      (analyte === "amylase" ? values.amylaseLimit : undefined),
  );

function lackingFluid(values: Values): readonly Refusal[] {
  const typed = analytesTyped(values);
  const missing = (field: Analyte, what: string): Refusal => ({
    code: "text-missing",
    field,
    args: { what },
  });
  if (typed.length === 0) return [missing("amylase", "what was found in the fluid, here or below")];
  return typed
    .filter((analyte) => values[analyte] === undefined)
    .map((analyte) => missing(analyte, `the ${analyte} in the fluid; ? if unknown`));
}

function resultsOf(values: Values, toldByOthers: boolean): FluidResult[] {
  const from = (fact: Typed): Fact<TestValue> | null =>
    fact === undefined ? null : sourced(fact, toldByOthers);
  return analytes.flatMap((analyte) => {
    const fluid = from(values[analyte]);
    if (fluid === null) return [];
    const upperLimit = analyte === "amylase" ? from(values.amylaseLimit) : null;
    return [{ analyte, fluid, serum: from(values[serumName(analyte)]), upperLimit }];
  });
}

/** Record what the laboratory found in the fluid of the tube, with the serum values of the same day. */
export const fluidTestForm = form({
  fields: (context: FormContext) => ({
    amylase: fluidField("amylase", "4200, ~4000; ? if unknown"),
    amylaseLimit: besideField("amylase", "Upper limit of the laboratory's serum range, amylase"),
    amylaseSerum: serumField("amylase"),
    bilirubin: fluidField("bilirubin", "85, 5 mg/dL; 5 ? if nobody told the unit"),
    bilirubinSerum: serumField("bilirubin"),
    creatinine: fluidField("creatinine", "900, 10 mg/dL"),
    creatinineSerum: serumField("creatinine"),
    triglyceride: fluidField("triglyceride", "2.4, 212 mg/dL"),
    triglycerideSerum: serumField("triglyceride"),
    when: whenField({ label: "Fluid taken on" }, context),
    serumOn: {
      ...optionalWhenField({ label: "Serum taken on", hint: "blank: the same day as the fluid" }, context),
      belongs: hasSerum,
    },
    toldBy: lineField({ label: "Told by", hint: "blank: the laboratory's report was read here" }),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: (values) => lackingFluid(values),
  entry: ({ when, serumOn, toldBy, note, ...values }): EntryOf<"fluid tested"> => ({
    kind: "fluid tested",
    ...when,
    payload: {
      results: resultsOf(values, toldBy !== null),
      serumOn: serumOn?.when ?? null,
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});
