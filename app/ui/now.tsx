import type { ReactNode } from "react";
import styles from "./marks.module.css";

/** What needs someone now: the only words in the accent. Weight carries it too, for print and for forced colors. */
export function Now({ children }: { readonly children: ReactNode }): ReactNode {
  return <strong className={styles.now}>{children}</strong>;
}
