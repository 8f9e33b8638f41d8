import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext, FormResult } from "#shared/record/form.ts";
import { readDiary } from "#shared/record/output/diary-form.ts";
import { type ReadingEntry, readingForm } from "#shared/record/output/reading-form.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

type Read<E> = (texts: Texts, context: FormContext) => FormResult<E>;

/** A tube wholly inside has no output, whatever is typed (`no-output`). */
const ofTubeOutside =
  <E>(read: Read<E>): Read<E> =>
  (texts, context) =>
    context.tube === null || !kindOf(context.tube.kind).outside
      ? { ok: false, refusals: [{ code: "no-output" }] }
      : read(texts, context);

/** What was typed as a reading of the tube, or every field to mend. */
export const readReading: Read<ReadingEntry> = ofTubeOutside(readingForm.read);

/** What was typed as a diary of the tube, or every cell to mend. */
export const readWholeDiary: Read<readonly ReadingEntry[]> = ofTubeOutside(readDiary);
