import { filledField } from "#shared/record/field/text-field.ts";
import { plainForm } from "#shared/record/form.ts";
import { NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

/** Join another record of the same person into this one, once both were looked at side by side. */
export const joinForm = plainForm({
  fields: () => ({
    how: filledField(
      { label: "Found how", hint: "asked at the desk, both letters read" },
      "how it was found that both are the same person",
      NOTE_LIMIT,
    ),
  }),
  entry: ({ how }) => ({ how }),
});
