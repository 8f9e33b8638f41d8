import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { suctionModes } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";

/** Record what the drain runs to now. The low-output counter starts again. */
export const suctionForm = form({
  fields: (context: FormContext) => ({
    mode: choiceField(
      { label: "Now", what: "what the drain runs to now" },
      choicesOf(suctionModes, modeWords),
    ),
    pressure: lineField({ label: "Pressure", hint: "as written, with its unit" }),
    when: whenField({ label: "Changed on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ mode, pressure, when, note }): EntryOf<"suction changed"> => ({
    kind: "suction changed",
    ...when,
    payload: { mode, pressure, note },
  }),
});
