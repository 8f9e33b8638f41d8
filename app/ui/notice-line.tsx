import type { ReactNode } from "react";
import styles from "./notice-line.module.css";

/** One line that says what has just happened, or what holds for the whole page; an act, such as Undo, may stand in it. */
export function NoticeLine({ children }: { readonly children: ReactNode }): ReactNode {
  return (
    <div className={styles.notice} role="status">
      {children}
    </div>
  );
}
