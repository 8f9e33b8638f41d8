import { choiceField, choicesOf, yesNoField } from "#shared/record/field/choice-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { type Mode, modes } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";

/** Record a cap: who covers the calls of the first days, and whether there is a bag at home. */
export const capForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Capped on" }, context),
    covers: lineField({ label: "Who covers the calls", hint: "also on days when the clinic is closed" }),
    bagAtHome: yesNoField({ label: "A bag is at home" }),
  }),
  entry: ({ when, covers, bagAtHome }): EntryOf<"capped"> => ({
    kind: "capped",
    ...when,
    payload: { covers, bagAtHome: bagAtHome ?? unknownFact },
  }),
});

const openModes = modes.filter((mode): mode is Exclude<Mode, "capped"> => mode !== "capped");

/** Record that the cap came off, and what the tube runs to now. */
export const uncapForm = form({
  fields: (context: FormContext) => ({
    when: whenField({ label: "Uncapped on" }, context),
    mode: choiceField(
      {
        label: "Now",
        what: "what the tube runs to now",
        initial: (context.tube === null ? null : kindOf(context.tube.kind).mode) ?? "to bag",
      },
      choicesOf(openModes, modeWords),
    ),
  }),
  entry: ({ when, mode }): EntryOf<"uncapped"> => ({ kind: "uncapped", ...when, payload: { mode } }),
});
