import { printBirth } from "#shared/day/print-day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { PatientDetails } from "#shared/record/patient/patient-details.ts";

const answer = (may: boolean | null | undefined): string =>
  may === true ? "yes" : may === false ? "no" : "";

type Identifiers = readonly { readonly issuer: string; readonly value: string }[];

/** Identity and contact as they would be typed into their form: reading these texts again gives the same details. */
export function patientTexts(
  details: Omit<PatientDetails, "identifiers"> & { readonly identifiers: Identifiers },
): Texts {
  const { identifiers, contact } = details;
  const [first, second] = identifiers;
  const { alternate } = contact;
  return {
    familyName: details.familyName,
    givenName: details.givenName,
    birthOn: details.birthOn === null ? "?" : printBirth(details.birthOn),
    number: first?.value ?? "",
    issuer: first?.issuer ?? "",
    telephones: contact.telephones
      .map(({ number, bestTimes }) => [number, bestTimes].filter(Boolean).join(" "))
      .join("\n"),
    livesIn: contact.livesIn ?? "",
    secondNumber: second?.value ?? "",
    secondIssuer: second?.issuer ?? "",
    language: details.language,
    needsInterpreter: answer(details.needsInterpreter),
    alternateName: alternate?.name ?? "",
    alternateTelephone: alternate?.telephone ?? "",
    alternateMayBeTold: answer(alternate?.mayBeTold),
    homeNurse: contact.homeNurse ?? "",
    referrer: contact.referrer ?? "",
    familyDoctor: contact.familyDoctor ?? "",
    responsibleService: contact.responsibleService ?? "",
  };
}
