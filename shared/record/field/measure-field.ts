import type { Measured } from "#shared/clinical/findings-schema.ts";
import { type MeasureName, measureOf } from "#shared/clinical/measures.ts";
import { readMeasure } from "#shared/clinical/read-measure.ts";
import { parsed } from "#shared/errors/refusal.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import { printMeasure } from "#shared/words/clinical.ts";

/** What is asked of a figure that is possible and rare. */
function rareFigure(name: MeasureName, fact: Fact<Measured> | undefined): string | null {
  const measured = fact === undefined ? undefined : known(fact);
  const { askUnder, askOver } = measureOf(name);
  if (measured === undefined || (measured.value >= askUnder && measured.value <= askOver)) return null;
  return `That is ${printMeasure(name, measured)}. Is it meant?`;
}

/** A measured figure; the label names the unit of a number that is typed alone. Blank says nothing. */
export const measureField = (
  name: MeasureName,
  { label, ...words }: FieldWords,
): FieldSpec<Fact<Measured> | undefined> => ({
  label: `${label}, ${measureOf(name).unit}`,
  ...words,
  read: (text) => (text.trim() === "" ? parsed(undefined) : readMeasure(text, name)),
  echo: (fact) => factWords(fact, (measured) => printMeasure(name, measured)),
  doubt: (fact) => rareFigure(name, fact),
});
