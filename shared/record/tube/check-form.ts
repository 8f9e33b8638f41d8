import { stateConcerns } from "#shared/fit/inside.ts";
import { asWords } from "#shared/record/field/match-word.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Record a tube check. What gave concern before stands typed, so that leaving it out is a finding and not a slip. */
export const checkForm = form({
  fields: (context: FormContext) => ({
    finding: noteField({ label: "Finding" }),
    study: lineField({ label: "Study", hint: "sinogram, cholangiogram, nephrostogram" }),
    concerns: wordsField(
      {
        label: "Concerns about its state",
        hint: `with commas between: ${stateConcerns.join(", ")}`,
        initial: context.tube?.concerns.join(", ") ?? "",
      },
      asWords(stateConcerns),
    ),
    when: whenField({ label: "Checked on" }, context),
  }),
  entry: ({ finding, study, concerns, when }): EntryOf<"checked"> => ({
    kind: "checked",
    ...when,
    payload: { study, finding, concerns: [...(concerns ?? [])] },
  }),
});
