import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Hand the tube over. It stays here, with all its dates, until a named person accepts it. */
export const handoverForm = form({
  fields: (context: FormContext) => ({
    to: filledField({ label: "To", hint: "service or place" }, "to whom it is handed over"),
    person: lineField({ label: "Person asked", hint: "blank: nobody by name yet" }),
    when: whenField({ label: "Handed over on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  entry: ({ to, person, when, note }): EntryOf<"handed over"> => ({
    kind: "handed over",
    ...when,
    payload: { to, person, note },
  }),
});

/** Record who accepted the care elsewhere: it ends the record here. */
export const acceptedForm = form({
  fields: (context: FormContext) => ({
    by: filledField({ label: "Accepted by", hint: "a person, by name" }, "the name of who accepted it"),
    place: lineField({ label: "At" }),
    how: lineField({ label: "Known how", hint: "letter of 14 Nov, telephone" }),
    when: whenField({ label: "Accepted on" }, context),
  }),
  entry: ({ by, place, how, when }): EntryOf<"accepted elsewhere"> => ({
    kind: "accepted elsewhere",
    ...when,
    payload: { by, place, how },
  }),
});
