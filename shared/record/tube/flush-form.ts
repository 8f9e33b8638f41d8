import { choiceField, choicesOf, yesNoField } from "#shared/record/field/choice-field.ts";
import { givenField } from "#shared/record/field/given-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { flushWents } from "#shared/tube/vocabulary.ts";

/** Record a flush that was given, and how it went. What is subtracted from output is typed with the output. */
export const flushForm = form({
  fields: (context: FormContext) => ({
    went: choiceField({ label: "It went in", what: "how it went in" }, choicesOf(flushWents)),
    given: givenField({ label: "Given, mL", hint: "10; ~10 if about; blank or ? if unknown" }),
    cameBack: yesNoField({ label: "It came back" }),
    when: whenField({ label: "Flushed on" }, context),
    toldBy: lineField({ label: "Told by", hint: "blank: done here" }),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ went, given, cameBack, when, toldBy, note }): EntryOf<"flushed"> => ({
    kind: "flushed",
    ...when,
    payload: {
      went,
      given: sourced(given, toldBy !== null),
      cameBack: sourced(cameBack ?? unknownFact, toldBy !== null),
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});
