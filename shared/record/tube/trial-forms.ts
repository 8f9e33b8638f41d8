import { choiceField, choicesOf, yesNoField } from "#shared/record/field/choice-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { type Mode, modes } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";

/** Start a clamp trial. The exchange date stands all the while. */
export const trialStartForm = form({
  fields: (context: FormContext) => ({
    covers: lineField({ label: "Who covers the calls", hint: "also on days when the clinic is closed" }),
    bagAtHome: yesNoField({ label: "A bag is at home" }),
    when: whenField({ label: "Started on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ when, covers, bagAtHome, note }): EntryOf<"clamp trial started"> => ({
    kind: "clamp trial started",
    ...when,
    payload: { covers, bagAtHome: bagAtHome ?? unknownFact, note },
  }),
});

const modesAfter = modes.filter(
  (mode): mode is Exclude<Mode, "on a clamp trial"> => mode !== "on a clamp trial",
);

const trialEndForm = <K extends "clamp trial passed" | "clamp trial failed">(
  kind: K,
  usual: (context: FormContext) => Mode,
) =>
  form({
    fields: (context: FormContext) => ({
      when: whenField({ label: kind === "clamp trial passed" ? "Passed on" : "Failed on" }, context),
      mode: choiceField(
        { label: "Now", what: "what the tube runs to now", initial: usual(context) },
        choicesOf(modesAfter, modeWords),
      ),
      note: noteField({ label: "What was found" }),
    }),
    entry: ({ when, mode, note }) => ({ kind, ...when, payload: { mode, note } }),
  });

export const trialPassedForm = trialEndForm("clamp trial passed", () => "capped");
export const trialFailedForm = trialEndForm("clamp trial failed", ({ tube }) =>
  tube === null ? "to bag" : (kindOf(tube.kind).mode ?? "to bag"),
);
