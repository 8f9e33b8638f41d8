import type { ReactNode } from "react";
import styles from "./output.module.css";

type AskedProps = { readonly sentences: readonly string[] };

/** What was asked of an entry that is logged all the same, said again where its undo stands. */
export function Asked({ sentences }: AskedProps): ReactNode {
  if (sentences.length === 0) return null;
  return (
    <ul className={styles.asked}>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
