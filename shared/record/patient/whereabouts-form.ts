import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { whereabouts } from "#shared/tube/vocabulary.ts";

/** Note where the patient is. Of an inpatient it is asked again in days; the dates of the tubes do not wait. */
export const whereaboutsForm = form({
  fields: (context: FormContext) => ({
    place: choiceField({ label: "The patient is", what: "where the patient is" }, choicesOf(whereabouts)),
    where: lineField({ label: "Where", hint: "ward, hospital, home" }),
    toldBy: lineField({ label: "Told by" }),
    when: whenField({ label: "Told on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ place, where, toldBy, when, note }): EntryOf<"whereabouts noted"> => ({
    kind: "whereabouts noted",
    ...when,
    payload: { place, where, ...(toldBy !== null && { toldBy }), note },
  }),
});
