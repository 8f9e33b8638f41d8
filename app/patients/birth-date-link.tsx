import type { ReactNode } from "react";
import { may } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import type { OpenStep } from "#shared/step/step.ts";

/** Whether a step asks for the patient's birth date: what is found is noted where the patient's identity is, not on a form of a tube. */
export const asksBirthDate = ({ why }: OpenStep): boolean =>
  why.some(({ code }) => code === "birth-date-unknown");

type BirthDateLinkProps = { readonly patientId: string; readonly person: Person };

/** Leads to where the birth date is typed, or, for who may not correct it, to the patient. */
export const BirthDateLink = ({ patientId, person }: BirthDateLinkProps): ReactNode =>
  may(person, "patient.correct") ? (
    <a href={`/patients/${patientId}/identity`}>Note the birth date</a>
  ) : (
    <a href={`/patients/${patientId}`}>Open the patient</a>
  );
