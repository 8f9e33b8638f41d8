import { lineField, noteField } from "#shared/record/field/text-field.ts";
import { form } from "#shared/record/form.ts";
import { placeOf, slotFields, slotRefusals, type VisitContext } from "#shared/record/visit/slot-fields.ts";

/** Move a visit to another slot. */
export const movingForm = form({
  fields: (context: VisitContext) => ({
    ...slotFields(context),
    by: lineField({ label: "Who asked", hint: "the patient, the ward, the clinic", detail: true }),
    reason: noteField({ label: "Why", detail: true }),
  }),
  check: (typed, context) => slotRefusals(typed, context),
  entry: ({ on, by, reason, ...slot }, context) => ({
    on,
    place: placeOf({ on, ...slot }, context),
    by,
    reason,
  }),
});
