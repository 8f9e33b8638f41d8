import type { ReactNode } from "react";
import styles from "./marks.module.css";

/** Words that explain the figure beside them. */
export function Soft({ children }: { readonly children: ReactNode }): ReactNode {
  return <span className={styles.soft}>{children}</span>;
}
