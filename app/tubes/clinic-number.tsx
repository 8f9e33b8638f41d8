import type { ReactNode } from "react";
import { numberByHand } from "#shared/words/home-paper.ts";
import styles from "./home-paper.module.css";

/** Whom the patient rings: the clinic's number as it is recorded, else a line to write it on. */
export function ClinicNumber({ clinic }: { readonly clinic: { name: string; phone: string } }): ReactNode {
  return (
    <p>
      <bdi>{clinic.name}</bdi>, telephone:{" "}
      {clinic.phone === "" ? (
        <>
          <span className={styles.blank} /> {numberByHand}
        </>
      ) : (
        <bdi className={styles.strong}>{clinic.phone}</bdi>
      )}
    </p>
  );
}
