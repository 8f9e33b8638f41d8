import type { PatientView } from "#server/patients/view-patient.ts";
import { clockText, dayAt, type Instant, type Zone } from "#shared/day/instant.ts";

export const UNKNOWN = "unknown";
export const NONE = "none";

/** An unknown is said: a blank reads as nothing, and a zero as a figure. */
export const orUnknown = <T extends string>(value: T | null): T | typeof UNKNOWN =>
  value === null || value === "" ? UNKNOWN : value;

export const yesNo = (value: boolean): string => (value ? "yes" : "no");

/** "2026-11-06 14:05" by the clock of that zone. */
export const minute = (at: Instant, zone: Zone): string => `${dayAt(at, zone)} ${clockText(at, zone)}`;

type OfPatient = { readonly patient: PatientView["patient"] };

const number = ({ patient }: OfPatient, place: 1 | 2): string => {
  const found = patient.identifiers.find((identifier) => identifier.place === place);
  return found === undefined ? NONE : `${found.issuer} ${found.value}`;
};

/** Whose row it is: stands first in every table. */
export const patientColumns = {
  "family name": ({ patient }: OfPatient) => patient.familyName,
  "given name": ({ patient }: OfPatient) => patient.givenName,
  "birth date": ({ patient }: OfPatient) => orUnknown(patient.birthOn),
  number: (of: OfPatient) => number(of, 1),
};

export const secondNumber = (of: OfPatient): string => number(of, 2);
