import { choicesOf, optionalChoiceField } from "#shared/record/field/choice-field.ts";
import { notOnField, printNotOn } from "#shared/record/field/not-on-field.ts";
import { noteField } from "#shared/record/field/text-field.ts";
import { form } from "#shared/record/form.ts";
import { placeOf, slotFields, slotRefusals, type VisitContext } from "#shared/record/visit/slot-fields.ts";
import type { NotOn } from "#shared/visit/visit.ts";

/** `notOn`: what the patient said the last time. */
export type BookingContext = VisitContext & { readonly notOn: NotOn };

/** Book a visit in a slot that was picked or typed; what is held for an answer is proposed. */
export const bookingForm = form({
  fields: (context: BookingContext) => ({
    ...slotFields(context),
    held: optionalChoiceField(
      { label: "How it stands", detail: true },
      choicesOf<"proposed">(["proposed"]),
      "Booked: the patient knows",
    ),
    notOn: notOnField({ label: "Cannot come on", initial: printNotOn(context.notOn), detail: true }),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: (typed, context) => slotRefusals(typed, context),
  entry: ({ on, held, notOn, note, ...slot }, context) => ({
    on,
    place: placeOf({ on, ...slot }, context),
    state: held ?? ("booked" as const),
    notOn,
    note,
  }),
});
