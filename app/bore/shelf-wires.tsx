import type { ReactNode } from "react";
import { EachOfOurs } from "#app/bore/each-of-ours.tsx";
import { namesThatPass, type OneOfOurs, type Ours } from "#shared/fit/which-pass.ts";
import styles from "./passage.module.css";

type ShelfWiresProps = { readonly wires: readonly OneOfOurs<Ours>[]; readonly paper: boolean };

/** In the order in which a plan holds a wire against them. */
const through = ["in the tube in place", "in the tube to come", "in the stiffener"] as const;

/** Which of our wires pass: each through both tubes, and the stiffener if any, the worst told, what passes first. */
export function ShelfWires({ wires, paper }: ShelfWiresProps): ReactNode {
  if (wires.length === 0)
    return <p className={styles.line}>No wire stands on the clinic's shelf, so no other can be named.</p>;
  const passing = namesThatPass(wires);
  return (
    <>
      <p className={styles.line}>
        {passing.length === 0
          ? "Of the wires on the shelf none is known to pass both tubes by size."
          : `Of the wires on the shelf these pass both tubes by size, their length apart: ${passing.join("; ")}.`}
      </p>
      <EachOfOurs
        heading="Each wire of the shelf, with the reason"
        ours={wires}
        through={through}
        open={paper}
      />
    </>
  );
}
