import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { liesBesideStent } from "#shared/review/beside-stent.ts";
import styles from "./before-shutting.module.css";

/** The clinic's row for taking out a kidney's tube that lies beside a stent. Without a row, that it lies so. */
export function BesideStent({ view }: { readonly view: TubePage }): ReactNode {
  const { tube, others, rows, approved } = view;
  if (!liesBesideStent(tube, others)) return null;
  const row = rows.planning?.besideStent ?? null;
  return (
    <ul className={styles.doubts}>
      <li>
        A stent lies on this side by its record, and may come along.{" "}
        {row === null ? "The protocol has no row for it." : `The row: ${row.says} (source ${row.source}).`}{" "}
        {row !== null && approved === null && <ExampleMark />}
      </li>
    </ul>
  );
}
