import { filledField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Confirm what was only told: an exchange done elsewhere, a removal. */
export const verifyForm = form({
  fields: (context: FormContext) => ({
    how: filledField(
      { label: "Confirmed how", hint: "report of 14 Nov read, tube seen here" },
      "how it was confirmed",
    ),
    when: whenField({ label: "Confirmed on" }, context),
  }),
  entry: ({ how, when }): EntryOf<"verified"> => ({ kind: "verified", ...when, payload: { how } }),
});
