import type { ReactNode } from "react";
import type { BySize } from "#shared/fit/passage.ts";
import { type Named, sizeGrounds } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type AnswerLineProps = { readonly now?: boolean; readonly children: ReactNode };

/** One line of an answer; in the accent where it needs someone. */
export const AnswerLine = ({ now = false, children }: AnswerLineProps): ReactNode => (
  <p className={styles.line} data-now={now || undefined}>
    {children}
  </p>
);

type GroundsProps = { readonly bySize: BySize; readonly named: Named; readonly open?: boolean };

/** The arithmetic behind a line, a sentence a fact. */
export function Grounds({ bySize, named, open = false }: GroundsProps): ReactNode {
  const grounds = sizeGrounds(bySize, named);
  if (grounds.length === 0) return null;
  return (
    <details className={styles.grounds} open={open}>
      <summary>What this rests on</summary>
      <ul>
        {grounds.map((ground) => (
          <li key={ground}>{ground}</li>
        ))}
      </ul>
    </details>
  );
}
