import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { callOutcomes } from "#shared/tube/vocabulary.ts";

/** Record a call, also one that reached nobody. */
export const callForm = form({
  fields: (context: FormContext) => ({
    outcome: choiceField({ label: "The call", what: "how the call came out" }, choicesOf(callOutcomes)),
    note: noteField({ label: "What was said" }),
    when: whenField({ label: "Called on", initial: "now" }, context),
  }),
  entry: ({ outcome, note, when }): EntryOf<"called"> => ({
    kind: "called",
    ...when,
    payload: { outcome, note },
  }),
});
