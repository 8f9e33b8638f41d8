import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { plainForm } from "#shared/record/form.ts";
import { answerStates } from "#shared/visit/prerequisites.ts";

/** How one thing that is to be settled before a visit stands, and who said so. */
export const preparingForm = plainForm({
  fields: () => ({
    state: choiceField(
      { label: "How it stands", what: "how it stands", initial: "settled" },
      choicesOf(answerStates),
    ),
    by: lineField({ label: "Who said so", hint: "a name" }),
    says: noteField({ label: "What was agreed" }),
  }),
  entry: (typed) => typed,
});
