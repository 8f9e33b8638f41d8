import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext, FormResult } from "#shared/record/form.ts";
import { type ReadingEntry, readingForm } from "#shared/record/output/reading-form.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

/** What was typed as a reading of the tube, or every field to mend. A tube wholly inside has none (`no-output`). */
export function readReading(texts: Texts, context: FormContext): FormResult<ReadingEntry> {
  if (context.tube === null || !kindOf(context.tube.kind).outside)
    return { ok: false, refusals: [{ code: "no-output" }] };
  return readingForm.read(texts, context);
}
