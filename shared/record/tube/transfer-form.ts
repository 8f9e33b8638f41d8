import { asWords } from "#shared/record/field/match-word.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { findOuts } from "#shared/tube/vocabulary.ts";

/** Record a transfer and what has to be found out; each is open until the record knows it. */
export const transferForm = form({
  fields: (context: FormContext) => ({
    place: filledField({ label: "From or to", hint: "another hospital, a nursing home" }, "the place"),
    findOut: wordsField(
      { label: "To find out", hint: `with commas between: ${findOuts.join(", ")}` },
      asWords(findOuts),
    ),
    askWhom: lineField({ label: "Ask whom" }),
    when: whenField({ label: "Transferred on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ place, findOut, askWhom, when, note }): EntryOf<"transferred"> => ({
    kind: "transferred",
    ...when,
    payload: { place, findOut: [...(findOut ?? [])], askWhom, note },
  }),
});
