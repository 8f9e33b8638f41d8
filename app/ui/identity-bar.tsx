import type { ReactNode } from "react";
import styles from "./identity-bar.module.css";

export type Identity = {
  /** Family name first, as the record has it. */
  readonly name: string;
  /** Two identifiers at least, each with its word: "born" and "3 Apr 1961", "clinic number" and "004711". */
  readonly identifiers: readonly { readonly word: string; readonly value: string }[];
  /** The tube that is looked at, side first: "Left nephrostomy, 8 F, locking loop". Null on the patient's own page. */
  readonly tube: string | null;
};

/** Who this is about and which tube: stays in sight while the page scrolls and while anything is recorded. */
export function IdentityBar({ name, identifiers, tube }: Identity): ReactNode {
  return (
    <section className={styles.bar} aria-label="Patient">
      <bdi className={styles.subject}>{name}</bdi>
      {identifiers.map(({ word, value }) => (
        <span key={word} className={styles.part}>
          <span className={styles.word}>{word}</span> <bdi>{value}</bdi>
        </span>
      ))}
      {tube !== null && <bdi className={styles.subject}>{tube}</bdi>}
    </section>
  );
}
