import { filledField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

/** Record that a named clinician decided that nothing more is followed: it ends the record. */
export const endForm = form({
  fields: (context: FormContext) => ({
    decidedBy: filledField(
      { label: "Decided by", hint: "a clinician, by name" },
      "which clinician decided it",
    ),
    reason: filledField(
      { label: "Reason", hint: "the piece stays: grown in, no symptoms" },
      "the reason",
      NOTE_LIMIT,
    ),
    when: whenField({ label: "Decided on" }, context),
  }),
  entry: ({ decidedBy, reason, when }): EntryOf<"follow-up ended"> => ({
    kind: "follow-up ended",
    ...when,
    payload: { decidedBy, reason },
  }),
});
