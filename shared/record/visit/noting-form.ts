import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { plainForm } from "#shared/record/form.ts";

const reason = noteField({ label: "Why, in words" });

/** The patient, or whoever speaks for them, has said that they come; that they are here; or what came of it without an entry of its own. */
export const notingForm = plainForm({
  fields: () => ({
    by: lineField({ label: "Who said so", hint: "the patient, the daughter, the ward" }),
    reason,
  }),
  entry: (typed) => typed,
});

/** A visit that does not take place says by whom. */
export const cancellingForm = plainForm({
  fields: () => ({
    by: filledField({ label: "Cancelled by", hint: "the patient, the ward, the clinic" }, "who cancelled it"),
    reason,
  }),
  entry: (typed) => typed,
});
