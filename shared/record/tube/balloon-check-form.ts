import { neededBalloonField } from "#shared/record/field/balloon-field.ts";
import { noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Record a check of the balloon water: what was in it, and what it holds now. */
export const balloonCheckForm = form({
  fields: (context: FormContext) => ({
    found: neededBalloonField(
      { label: "Found, mL", hint: "all that was drawn back; ? if unknown" },
      "how much water was found, in mL; ? if unknown",
    ),
    refilled: neededBalloonField(
      { label: "Refilled to, mL", hint: "water, not saline or air; ? if unknown" },
      "how much it holds now, in mL; ? if unknown",
    ),
    when: whenField({ label: "Checked on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ found, refilled, when, note }): EntryOf<"balloon checked"> => ({
    kind: "balloon checked",
    ...when,
    payload: { found, refilled, note },
  }),
});
