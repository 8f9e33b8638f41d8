import { filledField, noteField, textFactField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Record that anchors or sutures came out. */
export const anchorsForm = form({
  fields: (context: FormContext) => ({
    what: filledField(
      { label: "Removed", hint: "2 anchors, the skin suture; none where there were none" },
      "what was removed",
    ),
    fixation: textFactField({ label: "Fixed at the skin now by", hint: "disc, dressing; blank: unknown" }),
    when: whenField({ label: "Removed on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ what, fixation, when, note }): EntryOf<"anchors removed"> => ({
    kind: "anchors removed",
    ...when,
    payload: { what, ...(fixation !== undefined && { fixation }), note },
  }),
});
