import { letterTos } from "#shared/call/outcomes.ts";
import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** A letter went out because nobody was reached by telephone. */
export const letterForm = form({
  fields: (context: FormContext) => ({
    to: choiceField({ label: "The letter went to", what: "to whom the letter went" }, choicesOf(letterTos)),
    when: whenField({ label: "Sent on" }, context),
    note: noteField({ label: "Note" }),
  }),
  entry: ({ to, when, note }): EntryOf<"letter sent"> => ({
    kind: "letter sent",
    ...when,
    payload: { to, note },
  }),
});
