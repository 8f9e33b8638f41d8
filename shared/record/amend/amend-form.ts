import { filledField } from "#shared/record/field/text-field.ts";
import { plainForm } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

/** Why an entry is amended: stands before the fields of the entry's own form. Its name is no field's of any other form. */
export const amendForm = plainForm({
  fields: () => ({
    amendedBecause: filledField({ label: "Why it is changed" }, "why it is changed", NOTE_LIMIT),
  }),
  entry: ({ amendedBecause }) => ({ reason: amendedBecause }),
});
