import type { ReactNode } from "react";
import type { OneOfOurs, Ours } from "#shared/fit/which-pass.ts";
import { type Named, sizeLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type EachOfOursProps = {
  readonly heading: string;
  readonly ours: readonly OneOfOurs<Ours>[];
  /** "in the tube in place", in the order in which they were held against it; none where there is but one. */
  readonly through?: readonly string[];
  readonly named?: Named;
  readonly open?: boolean;
};

/** Each type of the shelf with its verdict and the reason, what passes first. */
export function EachOfOurs({ heading, ours, through = [], named, open }: EachOfOursProps): ReactNode {
  return (
    <details className={styles.grounds} open={open}>
      <summary>{heading}</summary>
      <ul>
        {ours.map(({ type, through: index, bySize }) => (
          <li key={type.name}>
            <b>{type.name}</b>. {sizeLine(bySize, named, through[index])}
          </li>
        ))}
      </ul>
    </details>
  );
}
