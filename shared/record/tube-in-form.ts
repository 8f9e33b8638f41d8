import type { Day } from "#shared/day/day.ts";
import type { TubeInForm } from "#shared/record/form.ts";
import type { TubeState } from "#shared/tube/state.ts";

/**
 * A tube that was taken over lay in its tract before its record opened here; one punctured anew has a tract that is younger than its
 * record. Where the puncture is unknown, nobody knows since when a tube was there.
 */
function inSince({ story, tract }: TubeState): Day | null {
  const punctured = tract.since.earliest;
  const opened = story[0]?.when.earliest ?? punctured;
  return punctured !== null && opened !== null && opened < punctured ? opened : punctured;
}

/** Of a tube, what a form is read beside. */
export const tubeInForm = (tube: TubeState): TubeInForm => {
  const { id, kind, role, mode, side, concerns } = tube;
  return { id, kind, role, mode, side, concerns, inSince: inSince(tube) };
};
