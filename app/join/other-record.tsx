import type { ReactNode } from "react";
import { fullNameOf, type Named } from "#app/patients/identity-of.ts";
import { printBirth } from "#shared/day/print-day.ts";

export type OtherRecordFound = Named & { readonly id: string };

export const numbersText = ({ identifiers }: Pick<Named, "identifiers">): string =>
  identifiers.map(({ issuer, value }) => `${issuer} ${value}`).join(", ");

export const bornText = ({ birthOn }: Pick<Named, "birthOn">): string =>
  birthOn === null ? "birth date unknown" : `born ${printBirth(birthOn)}`;

type OtherRecordProps = { readonly record: OtherRecordFound; readonly patientId: string };

/** One record that may be the same person's: leads to both, side by side. */
export function OtherRecord({ record, patientId }: OtherRecordProps): ReactNode {
  return (
    <li>
      <a href={`/patients/${patientId}/join/${record.id}`}>
        <bdi>{fullNameOf(record)}</bdi>
      </a>{" "}
      <bdi>{numbersText(record)}</bdi>, {bornText(record)}
    </li>
  );
}
