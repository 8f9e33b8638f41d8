import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

const whoms = ["the patient", "a carer"] as const;

/** The patient has been told that a tube lies inside them, and by when it is changed or taken out. */
export const toldForm = form({
  fields: (context: FormContext) => ({
    whom: choiceField({ label: "Told", what: "who was told" }, choicesOf(whoms)),
    language: filledField({ label: "In which language" }, "in which language they were told"),
    by: filledField({ label: "Told by", hint: "name; the interpreter's too" }, "who told them"),
    when: whenField({ label: "Told on", initial: "today" }, context),
  }),
  entry: ({ when, ...payload }): EntryOf<"told of the tube"> => ({
    kind: "told of the tube",
    ...when,
    payload,
  }),
});
