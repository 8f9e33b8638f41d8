import type { Identity } from "#app/ui/identity-bar.tsx";
import type { Day } from "#shared/day/day.ts";
import { printBirth } from "#shared/day/print-day.ts";

export type Named = {
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly identifiers: readonly { readonly issuer: string; readonly value: string }[];
};

export const fullNameOf = ({ familyName, givenName }: Pick<Named, "familyName" | "givenName">): string =>
  givenName === "" ? familyName : `${familyName}, ${givenName}`;

/** Name, birth date and every number: two identifiers at least, whatever is unknown among them. */
export const identityOf = (patient: Named, tube: string | null): Identity => ({
  name: fullNameOf(patient),
  identifiers: [
    { word: "born", value: patient.birthOn === null ? "on an unknown date" : printBirth(patient.birthOn) },
    ...patient.identifiers.map(({ issuer, value }) => ({ word: issuer, value })),
  ],
  tube,
});

/** Name and one identifier, for a paper that goes home or into a wallet: the record's first number, else the birth date. */
export function homeIdentity(patient: Named): Pick<Identity, "name" | "identifiers"> {
  const { name, identifiers } = identityOf(patient, null);
  const [born, number] = identifiers;
  return { name, identifiers: [number ?? born].filter((one) => one !== undefined) };
}
