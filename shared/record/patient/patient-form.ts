import type { Refusal } from "#shared/errors/refusal.ts";
import { birthField } from "#shared/record/field/birth-field.ts";
import { knownYesNoField } from "#shared/record/field/choice-field.ts";
import { telephonesField } from "#shared/record/field/telephones-field.ts";
import { filledField, lineField } from "#shared/record/field/text-field.ts";
import { zoneField } from "#shared/record/field/zone-field.ts";
import { type FormContext, form } from "#shared/record/form.ts";
import { NAME_LIMIT, NUMBER_LIMIT } from "#shared/record/patient/limits.ts";
import type { Contact, PatientDetails } from "#shared/record/patient/patient-details.ts";

type TypedContact = {
  readonly alternateName: string | null;
  readonly alternateTelephone: string | null;
  readonly alternateMayBeTold: boolean | null;
};

function alternateOf(typed: TypedContact): Contact["alternate"] {
  const { alternateName: name, alternateTelephone: telephone, alternateMayBeTold: mayBeTold } = typed;
  return name === null ? null : { name, telephone, mayBeTold };
}

/** Who the patient is and how they are reached. */
export const patientForm = form({
  fields: (context: FormContext) => ({
    familyName: filledField({ label: "Family name" }, "the family name", NAME_LIMIT),
    givenName: filledField({ label: "Given name" }, "the given name", NAME_LIMIT),
    birthOn: birthField({ label: "Born on", hint: "3 may 1957; ? if unknown" }, context),
    number: filledField(
      { label: "Record number", hint: "kept as typed, leading zeros too" },
      "the record number",
      NUMBER_LIMIT,
    ),
    issuer: filledField(
      { label: "Issued by", initial: "this hospital" },
      "who issued the record number",
      NAME_LIMIT,
    ),
    telephones: telephonesField({
      label: "Telephones",
      hint: "one a line, then the best times: 555 0117 after 5 pm",
    }),
    livesIn: zoneField({
      label: "Time zone of the patient",
      hint: "if it is not the clinic's: Denver, or America/Denver",
      detail: true,
    }),
    secondNumber: lineField({ label: "Second number", detail: true }, NUMBER_LIMIT),
    secondIssuer: lineField({ label: "Second number issued by", detail: true }, NAME_LIMIT),
    language: lineField({ label: "Language", detail: true }, NAME_LIMIT),
    needsInterpreter: knownYesNoField({ label: "Needs an interpreter", detail: true }, "Not known"),
    alternateName: lineField(
      { label: "Alternate contact", hint: "name, and who it is", detail: true },
      NAME_LIMIT,
    ),
    alternateTelephone: lineField({ label: "Telephone of the alternate contact", detail: true }),
    alternateMayBeTold: knownYesNoField(
      { label: "The patient allows telling them", detail: true },
      "Not asked",
    ),
    homeNurse: lineField({ label: "Home nurse", detail: true }),
    referrer: lineField({ label: "Referrer", detail: true }),
    familyDoctor: lineField({ label: "Family doctor", detail: true }),
    responsibleService: lineField({ label: "Responsible service", detail: true }),
  }),
  check: ({ secondNumber, secondIssuer, number, issuer, ...contact }) => {
    const refusals: Refusal[] = [];
    const missing = (field: string, what: string): void => {
      refusals.push({ code: "text-missing", field, args: { what } });
    };
    if (secondNumber !== null && secondIssuer === null)
      missing("secondIssuer", "who issued the second number");
    if (secondNumber === null && secondIssuer !== null) missing("secondNumber", "the second number");
    if (secondNumber === number && secondIssuer === issuer)
      refusals.push({ code: "choice-repeated", field: "secondNumber" });
    if (contact.alternateName === null && contact.alternateTelephone !== null)
      missing("alternateName", "whose telephone this is");
    return refusals;
  },
  entry: (values): PatientDetails => {
    const { familyName, givenName, birthOn, number, issuer, secondNumber, secondIssuer } = values;
    const { telephones, homeNurse, referrer, familyDoctor, responsibleService, livesIn } = values;
    const second =
      secondNumber === null || secondIssuer === null ? [] : [{ issuer: secondIssuer, value: secondNumber }];
    return {
      familyName,
      givenName,
      birthOn,
      identifiers: [{ issuer, value: number }, ...second],
      language: values.language ?? "",
      needsInterpreter: values.needsInterpreter,
      contact: {
        telephones: [...telephones],
        alternate: alternateOf(values),
        homeNurse,
        referrer,
        familyDoctor,
        responsibleService,
        ...(livesIn !== null && { livesIn }),
      },
    };
  },
});
