import type { ReactNode } from "react";
import styles from "./marks.module.css";

/** Stands beside every figure that comes from a row without an approver and a date. */
export function ExampleMark(): ReactNode {
  return (
    <abbr className={styles.example} title="An example row: no one in this clinic has approved it yet">
      EXAMPLE
    </abbr>
  );
}
