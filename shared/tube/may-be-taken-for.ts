import { known } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";

type Placed = Pick<TubeState, "id" | "side" | "status">;

/**
 * The others that are in on the side of this one, or on a side that nobody knows: what is told of "the tube" may be
 * told of them.
 */
export function mayBeTakenFor<T extends Placed>(tube: Pick<Placed, "id" | "side">, all: readonly T[]): T[] {
  const side = known(tube.side);
  return all.filter((other) => {
    if (other.id === tube.id || other.status !== "in") return false;
    const theirs = known(other.side);
    return side === undefined || theirs === undefined || side === theirs;
  });
}
