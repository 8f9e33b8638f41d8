import { ownerField } from "#shared/record/field/owner-field.ts";
import { form, type StaffInForm } from "#shared/record/form.ts";

/** The account that closes, and everyone with an open one. */
export type ClosingContext = { readonly closes: string; readonly staff: readonly StaffInForm[] };

/** Close an account: who takes the steps that are this person's by name. */
export const closingForm = form({
  fields: ({ closes, staff }: ClosingContext) => ({
    passTo: ownerField(
      { label: "Open steps go to", initial: "any nurse" },
      staff.filter(({ id }) => id !== closes),
    ),
  }),
  entry: ({ passTo }) => ({
    passTo: passTo.staffId === undefined ? { role: passTo.role } : { staffId: passTo.staffId },
  }),
});
