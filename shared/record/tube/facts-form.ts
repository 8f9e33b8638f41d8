import { choicesOf, optionalChoiceField } from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { factFields, factsOf, SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { modes } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";

/** Note facts of the tube in place: only what is typed is said. */
export const factsForm = form({
  fields: (context: FormContext) => ({
    size: optionalLengthField({ label: "Size", hint: SIZE_HINT }, "tube outside"),
    ...factFields(),
    mode: optionalChoiceField({ label: "Mode", detail: true }, choicesOf(modes, modeWords), "Not said"),
    toldBy: lineField({
      label: "Told by",
      hint: "blank: seen here; a letter, the patient, another hospital",
    }),
    when: whenField({ label: "Seen or told on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: ({ mode, note, toldBy, when, ...typed }) => {
    const said = Object.keys(factsOf(typed, { toldByOthers: false, blank: "says nothing" })).length > 0;
    return said || mode !== undefined || note !== null ? [] : [{ code: "nothing-said", field: "size" }];
  },
  entry: ({ mode, note, toldBy, when, ...typed }): EntryOf<"facts noted"> => ({
    kind: "facts noted",
    ...when,
    payload: {
      facts: factsOf(typed, { toldByOthers: toldBy !== null, blank: "says nothing" }),
      ...(mode !== undefined && { mode }),
      ...(toldBy !== null && { toldBy }),
      note,
    },
  }),
});
