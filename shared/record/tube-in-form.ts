import type { Day } from "#shared/day/day.ts";
import type { ReasonInForm, TubeInForm } from "#shared/record/form.ts";
import { answerableIn } from "#shared/step/answerable.ts";
import type { Why } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { whySentence } from "#shared/words/why.ts";

/**
 * A tube that was taken over lay in its tract before its record opened here; one punctured anew has a tract that is younger than its
 * record. Where the puncture is unknown, nobody knows since when a tube was there.
 */
function inSince({ story, tract }: TubeState): Day | null {
  const punctured = tract.since.earliest;
  const opened = story[0]?.when.earliest ?? punctured;
  return punctured !== null && opened !== null && opened < punctured ? opened : punctured;
}

/** Why an alarm stands, as a form that closes it shows and names it. */
const reasonsInForm = (alarm: readonly Why[]): readonly ReasonInForm[] =>
  answerableIn(alarm).map(({ key, until, line }) => ({
    key,
    until,
    says: whySentence(line),
    row: line.code === "alarm-low" ? "low" : line.code === "alarm-high" ? "high" : null,
  }));

/** Of a tube, what a form is read beside. `alarm`: the why of its alarm, where one stands. */
export const tubeInForm = (tube: TubeState, alarm: readonly Why[] = []): TubeInForm => {
  const { id, kind, role, mode, side, concerns } = tube;
  return { id, kind, role, mode, side, concerns, inSince: inSince(tube), alarm: reasonsInForm(alarm) };
};
