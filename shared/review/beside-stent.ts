import { known } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";

type Lying = Pick<TubeState, "role" | "side" | "status" | "organ">;

/**
 * Whether a tube that drains the kidney lies beside a stent of the same side, or of a side that is not known of one of them: taking it out
 * may pull the stent along.
 */
export function liesBesideStent(tube: Lying, others: readonly Lying[]): boolean {
  if (tube.role !== "drains an organ" || tube.organ !== "kidney") return false;
  const side = known(tube.side);
  return others.some((other) => {
    const stent = other.role === "internal" && other.status === "in" && other.organ === "ureter";
    const same = side === undefined || known(other.side) === undefined || known(other.side) === side;
    return stent && same;
  });
}
