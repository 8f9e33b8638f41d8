import type { Reach } from "#shared/call/reach.ts";
import type { Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { blankRecord, nothingSaid } from "#shared/tube/open-record.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** A tube without what nobody has said anything of: nearly half of the text, which is read of everybody at once. */
type TubeInShort = Omit<TubeState, keyof typeof nothingSaid> & Partial<TubeState>;

/**
 * A patient as the steps are computed from where no log of readings is asked: of each story its first line. How many entries there are is
 * not of it, or each would write it again.
 */
type PatientInShort = {
  readonly bornOn: Day | null;
  readonly livesIn?: Zone | undefined;
  readonly tubes: Omit<PatientTubes, "lastSeq" | "tubes"> & { readonly tubes: readonly TubeInShort[] };
};

const unsaid = new Map(Object.entries(nothingSaid).map(([name, value]) => [name, JSON.stringify(value)]));

const isSaid = ([name, value]: readonly [string, unknown]): boolean =>
  unsaid.get(name) !== JSON.stringify(value);

const saidOf = (tube: TubeState): TubeInShort =>
  Object.fromEntries(Object.entries(tube).filter(isSaid)) as TubeInShort;

/** What is known of a patient beside the entries, as far as dates hang on it. */
type Beside = Pick<Books, "bornOn"> & Pick<Reach, "livesIn">;

export function inShort(
  { lastSeq: _lastSeq, ...state }: PatientTubes,
  { bornOn, livesIn }: Beside,
): PatientInShort {
  const tubes = state.tubes.map((tube) => saidOf({ ...tube, story: tube.story.slice(0, 1) }));
  return { bornOn, ...(livesIn !== null && { livesIn }), tubes: { ...state, tubes } };
}

/** What is known of a patient, as it was stored; texts of older releases leave nothing out. */
export function fromShort(text: string): Beside & { readonly state: PatientTubes } {
  const { bornOn, livesIn = null, tubes } = JSON.parse(text) as PatientInShort;
  const whole = tubes.tubes.map((tube): TubeState => ({ ...blankRecord, ...tube }));
  return { bornOn, livesIn, state: { ...tubes, tubes: whole, lastSeq: 0 } };
}
