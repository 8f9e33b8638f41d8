import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeDecided } from "#shared/record/not-before-decided.ts";
import { goingOn } from "#shared/tube/vocabulary.ts";

/** A clinician decides what goes on in hospice, and until when; then it is asked again. */
export const hospiceForm = form({
  fields: (context: FormContext) => ({
    calls: choiceField({ label: "Calls", what: "whether calls go on" }, choicesOf(goingOn)),
    exchanges: choiceField(
      { label: "Exchanges and reviews", what: "whether exchanges go on" },
      choicesOf(goingOn),
    ),
    until: comingDayField({ label: "Until", what: "the day until which this holds" }, context),
    decidedBy: filledField({ label: "Decided by" }, "which clinician decided it"),
    team: lineField({ label: "With which team" }),
    when: whenField({ label: "Decided on" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: ({ until, when }) => notBeforeDecided("until", until, when),
  entry: ({ when, ...payload }): EntryOf<"hospice decided"> => ({
    kind: "hospice decided",
    ...when,
    payload,
  }),
});
