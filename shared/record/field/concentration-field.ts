import { parsed } from "#shared/errors/refusal.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Analyte, unitsOf } from "#shared/review/analyte.ts";
import type { TestValue } from "#shared/review/fluid-test-schema.ts";
import { readConcentration, unitDoubt } from "#shared/review/read-concentration.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { printTestValue } from "#shared/words/fluid-tests.ts";

/** A value from the laboratory; the label names the unit of a number that is typed alone. Blank says nothing. */
export const concentrationField = (
  analyte: Analyte,
  { label, ...words }: FieldWords & Pick<FieldSpec<never>, "belongs">,
): FieldSpec<Fact<TestValue> | undefined> => ({
  label: `${label}, ${unitsOf(analyte).own}`,
  ...words,
  read: (text) => (text.trim() === "" ? parsed(undefined) : readConcentration(text, analyte)),
  echo: (fact) => factWords(fact, (value) => printTestValue(value, analyte)),
  doubt: (fact, text) => unitDoubt(fact, { text, analyte }),
});
