import type { StateConcern } from "#shared/fit/inside.ts";
import { passageBySize } from "#shared/fit/pass-by-size.ts";
import type { ByState, Passage, WirePassage } from "#shared/fit/passage.ts";

/** `concerns` undefined: nobody has looked, as for a tube still in its package. Empty: none is recorded as present. */
export function passageByState(concerns: readonly StateConcern[] | undefined): ByState {
  if (concerns === undefined) return { state: "not recorded" };
  return concerns.length === 0
    ? { state: "nothing recorded as present" }
    : { state: "in doubt", concerns: [...new Set(concerns)] };
}

/** One wire through one tube, in two lines: by size and by state. */
export const wirePassage = (
  passage: Passage,
  concerns: readonly StateConcern[] | undefined,
): WirePassage => ({ bySize: passageBySize(passage), byState: passageByState(concerns) });
