import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { mayLieIn } from "#shared/tube/may-lie-in.ts";
import type { TubeState } from "#shared/tube/state.ts";

type Lying = Pick<TubeState, "kind" | "side" | "status">;

/**
 * Whether a tube that drains the kidney lies beside a stent of the same side, or of a side that is not known of one of them: taking it out
 * may pull the stent along.
 */
export function liesBesideStent(tube: Lying, others: readonly Lying[]): boolean {
  // By the kind: an organ can be typed in other words, "transplant kidney".
  if (kindOf(tube.kind).organ !== "kidney") return false;
  const side = known(tube.side);
  return others.some((other) => {
    const stent = kindOf(other.kind).organ === "ureter" && mayLieIn(other);
    const same = side === undefined || known(other.side) === undefined || known(other.side) === side;
    return stent && same;
  });
}
