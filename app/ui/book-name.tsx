import type { ReactNode } from "react";
import styles from "./book-name.module.css";

/** The name with its mark: one line of the dwell strip, from where a clock began over today's rule to a latest date. */
export function BookName(): ReactNode {
  return (
    <span className={styles.name}>
      <svg className={styles.mark} viewBox="0 0 44 16" aria-hidden="true">
        <circle cx="4" cy="8" r="3" />
        <path d="M7 8H27" />
        <path className={styles.ahead} d="M27 8H41" />
        <path className={styles.latest} d="M41 3.5V12.5" />
        <path className={styles.today} d="M27 0V16" />
      </svg>
      Dwellbook
    </span>
  );
}
