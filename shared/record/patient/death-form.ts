import { lineField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Record a death: every tube's record ends and calls stop at once. */
export const deathForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Died on" }, context),
    toldBy: lineField({ label: "Told by" }),
  }),
  entry: ({ when, toldBy }): EntryOf<"died"> => ({ kind: "died", ...when, payload: { toldBy } }),
});
