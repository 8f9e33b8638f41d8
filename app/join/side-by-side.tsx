import type { ReactNode } from "react";
import { numbersText } from "#app/join/other-record.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import type { PatientPage } from "#app/patients/patient-page.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { Now } from "#app/ui/now.tsx";
import { printBirth, printWhen } from "#shared/day/print-day.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { tubeName } from "#shared/tube/name.ts";
import { telephonesText } from "#shared/words/contact.ts";
import styles from "./join.module.css";

export type Sides = { readonly stays: PatientPage; readonly other: PatientPage };

const tubesText = ({ state }: PatientPage): string =>
  state.tubes
    .map((tube) => (tube.status === "ended" ? `${tubeName(tube)} (ended)` : tubeName(tube)))
    .join("; ");

const lines: readonly { readonly word: string; readonly says: (page: PatientPage) => string | null }[] = [
  { word: "Name", says: ({ patient }) => fullNameOf(patient) },
  {
    word: "Born",
    says: ({ patient }) => (patient.birthOn === null ? "unknown" : printBirth(patient.birthOn)),
  },
  { word: "Numbers", says: ({ patient }) => numbersText(patient) },
  { word: "Telephones", says: ({ patient }) => telephonesText(patient.contact as Contact) },
  { word: "Tubes", says: (page) => tubesText(page) || "none recorded" },
  {
    word: "Died",
    says: ({ state }) => (state.died === null ? "not recorded" : printWhen(state.died.when)),
  },
];

/** Who both records say this is, line by line; two birth dates that differ are said first. */
export function SideBySide({ stays, other }: Sides): ReactNode {
  const [here, there] = [stays.patient.birthOn, other.patient.birthOn];
  const differ = here !== null && there !== null && here !== there;
  const unsure = here === null || there === null;
  return (
    <>
      {differ && (
        <p role="alert" className={styles.warning}>
          <Now>The birth dates differ.</Now> Find out which is right before you join them, or whether these
          are two people.
        </p>
      )}
      {unsure && (
        <p className={styles.warning}>
          The birth date is not known in both: the other lines alone say that this is one person.
        </p>
      )}
      <DataTable
        caption="Both records"
        columns={[
          { head: "What", cell: ({ word }) => word },
          {
            head: "This record, which stays",
            cell: ({ says }) => <bdi>{says(stays) ?? "not recorded"}</bdi>,
          },
          {
            head: "The other, which goes on here",
            cell: ({ says }) => <bdi>{says(other) ?? "not recorded"}</bdi>,
          },
        ]}
        rows={lines}
        keyOf={({ word }) => word}
        none=""
      />
    </>
  );
}
