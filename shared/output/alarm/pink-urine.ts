import type { Instant } from "#shared/day/instant.ts";
import { newCharacters } from "#shared/output/alarm/expected-fluid.ts";
import type { AlarmInput } from "#shared/output/alarm/reason.ts";
import { byEmptying } from "#shared/output/alarm/runs.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Character } from "#shared/tube/vocabulary.ts";

/** Urine with a little blood in it. */
const PINK: Character = "serosanguineous";

type OfTube = Pick<AlarmInput, "tube" | "zone" | "protocol">;

/** When something was done through the tract. */
const procedures = ({ tube, zone }: OfTube): readonly Instant[] =>
  tube.story
    .filter(({ kind }) => ruleOf(kind).resets !== "neither" || kind === "repositioned")
    .map((line) => instantOf(line, zone))
    .filter((at) => at !== null);

/** Blood-tinged urine so soon after a procedure is no alarm: it is asked again the next day. At the row's hours it is one. */
export function isPinkSoonAfter(of: OfTube) {
  const hours = of.protocol.outputRows?.newFluid?.pinkUrineHours ?? 0;
  const done = kindOf(of.tube.kind).output === "urine" ? procedures(of) : [];
  return (character: Character, { to }: Reading): boolean =>
    character === PINK && done.some((at) => to >= at && to - at < hours * HOUR_MS);
}

/**
 * The reading of pink urine that is to be asked again: the last one that somebody said the look of, while it is pink and not yet an
 * alarm. Null where a later one says otherwise, where pink is expected of the tube, or where the table has no row.
 */
export function pinkToAskAgain({ readings, ...of }: OfTube & Pick<AlarmInput, "readings">): Reading | null {
  if (!readings.some(({ characters }) => characters.includes(PINK))) return null;
  if (!newCharacters(of.tube.expectedFluid).includes(PINK)) return null;
  const said = readings.filter((one) => !one.procedureAspirate && one.characters.length > 0);
  const last = said.toSorted(byEmptying).at(-1);
  return last?.characters.includes(PINK) && isPinkSoonAfter(of)(PINK, last) ? last : null;
}
