import type { ReactNode } from "react";
import { homeIdentity, type Named } from "#app/patients/identity-of.ts";
import styles from "./home-paper.module.css";

/** Whose paper it is. */
export function HomeIdentity({ patient }: { readonly patient: Named }): ReactNode {
  const { name, identifiers } = homeIdentity(patient);
  return (
    <p>
      <bdi className={styles.strong}>{name}</bdi>
      {identifiers.map(({ word, value }) => (
        <span key={word} className={styles.identifier}>
          {word} <bdi>{value}</bdi>
        </span>
      ))}
    </p>
  );
}
