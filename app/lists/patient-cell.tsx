import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { printBirth } from "#shared/day/print-day.ts";
import styles from "./cells.module.css";

/** A patient in a list: the name, which leads to the patient's page, and both identifiers. */
export function PatientCell({ patient }: { readonly patient: ListLine["patient"] }): ReactNode {
  const { id, familyName, givenName, number, birthOn } = patient;
  return (
    <>
      <a className={styles.name} href={`/patients/${id}`} dir="auto">
        {givenName === "" ? familyName : `${familyName}, ${givenName}`}
      </a>{" "}
      <span className={styles.detail}>
        {`${number ?? "no number"}, ${birthOn === null ? "birth date unknown" : `born ${printBirth(birthOn)}`}`}
      </span>
    </>
  );
}
