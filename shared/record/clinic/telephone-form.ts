import { parsed, unread } from "#shared/errors/refusal.ts";
import { numberFirst } from "#shared/record/field/telephones-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import { NUMBER_LIMIT } from "#shared/record/patient/limits.ts";

/** The number as it stands, "" where there is none. */
export type TelephoneContext = { readonly phone: string };

/** One number and nothing else, kept as it is typed: it is printed so. */
const clinicNumberField = ({ phone }: TelephoneContext): FieldSpec<string> => ({
  label: "Telephone that patients ring",
  hint: "as it is dialed: 555 0100, +44 20 5550 0100 ext 12; blank: papers leave a line to write it on",
  initial: phone,
  read: (text) => {
    const typed = text.trim();
    if (typed.length > NUMBER_LIMIT) return unread("text-too-long", { limit: NUMBER_LIMIT });
    if (typed === "" || numberFirst(typed)?.number === typed) return parsed(typed);
    return unread("clinic-telephone-not-understood", { text: typed });
  },
  echo: (number) => (number === "" ? "none: a line to write it on" : number),
});

/** Set the number that the output diary and the tube card tell the patient to ring. */
export const telephoneForm = form({
  fields: (context: TelephoneContext) => ({ phone: clinicNumberField(context) }),
  entry: ({ phone }) => ({ phone }),
});
