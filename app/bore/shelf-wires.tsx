import type { ReactNode } from "react";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import type { BySize } from "#shared/fit/passage.ts";
import type { OneOfOurs } from "#shared/fit/shelf-wires.ts";
import { sizeLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type ShelfWiresProps = { readonly wires: readonly OneOfOurs<Coaxial>[]; readonly paper: boolean };

const verdicts = {
  passes: "passes by size",
  doubt: "doubt",
  "cannot tell": "cannot tell",
  "does not pass": "does not pass",
} as const satisfies Record<BySize["verdict"], string>;

/** In the order in which a plan holds a wire against them. */
const through = ["In the tube in place", "In the tube to come", "In the stiffener"] as const;

/** Which of our wires pass: each through both tubes, and the stiffener if any, the worst told, what passes first. */
export function ShelfWires({ wires, paper }: ShelfWiresProps): ReactNode {
  if (wires.length === 0)
    return <p className={styles.line}>No wire stands on the clinic's shelf, so no other can be named.</p>;
  const passing = wires.filter(({ verdict }) => verdict === "passes").map(({ type }) => type.name);
  return (
    <>
      <p className={styles.line}>
        {passing.length === 0
          ? "Of the wires on the shelf none is known to pass both tubes by size."
          : `Of the wires on the shelf these pass both tubes by size, their length apart: ${passing.join("; ")}.`}
      </p>
      <details className={styles.grounds} open={paper}>
        <summary>Each wire of the shelf, with the reason</summary>
        <ul>
          {wires.map(({ type, verdict, through: index, bySize }) => (
            <li key={type.name}>
              <b>{type.name}</b>: {verdicts[verdict]}. {through[index]}: {sizeLine(bySize)}
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
