import { neededYesNoField } from "#shared/record/field/choice-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Record where the tip is. */
export const tipForm = form({
  fields: (context: FormContext) => ({
    inPlace: neededYesNoField({ label: "The tip is in place" }, "yes, no or ?"),
    where: lineField({ label: "Where it is", hint: "renal pelvis, back in the stomach" }),
    when: whenField({ label: "Seen on" }, context),
  }),
  entry: ({ inPlace, where, when }): EntryOf<"tip position"> => ({
    kind: "tip position",
    ...when,
    payload: { inPlace, where },
  }),
});
