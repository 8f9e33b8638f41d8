import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { unknownFact } from "#shared/tube/certainty.ts";

/** Record that the tube was put back in place. Neither clock starts again; where the tip is now is to be confirmed. */
export const repositionForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Repositioned on" }, context),
    externalLength: optionalLengthField({ label: "External length now, skin to hub, cm" }, "external length"),
    seenHow: lineField({ label: "Seen how", hint: "under imaging, at the bedside" }),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ when, externalLength, seenHow, note }): EntryOf<"repositioned"> => ({
    kind: "repositioned",
    ...when,
    payload: { externalLength: externalLength ?? unknownFact, seenHow, note },
  }),
});
