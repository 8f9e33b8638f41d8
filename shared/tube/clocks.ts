import { type Day, daysBetween, earlier } from "#shared/day/day.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Age in days on a day, or that it cannot be told because no date is known. */
export type Age =
  | { readonly known: true; readonly days: number; readonly exact: boolean }
  | { readonly known: false };

const age = (since: Day | null, exact: boolean, today: Day): Age =>
  since === null ? { known: false } : { known: true, days: Math.max(0, daysBetween(since, today)), exact };

/** A record that has ended counts no further than its last plausible day. */
const countedTo = ({ status, ending }: TubeState, today: Day): Day =>
  status === "ended" && ending?.when.latest ? earlier(ending.when.latest, today) : today;

/** How long the catheter may have been in: from its earliest plausible day, so that an error falls on the careful side. */
export const catheterAge = (tube: TubeState, today: Day): Age =>
  age(tube.catheter.since.earliest, tube.catheter.since.precision === "day", countedTo(tube, today));

/**
 * How old the tract is at least: from its latest plausible day. Where the puncture is undated, the tract is at least as
 * old as the first tube that is known to have lain in it; an exchange makes it no younger.
 */
export function tractAge(tube: TubeState, today: Day): Age {
  const since = tube.tract.since.latest ?? tube.tractBy;
  return age(since, tube.tract.since.precision === "day", countedTo(tube, today));
}

/**
 * Whether the catheter in place is the one that the tract was made for. Of one taken over only where puncture and tube are of the same
 * known day: nobody else says that it was never exchanged.
 */
export function isFirstCatheter({ catheter, tract, takenOverFrom }: TubeState): boolean {
  if (catheter.eventId !== tract.eventId) return false;
  if (takenOverFrom === null) return true;
  return tract.since.precision === "day" && tract.since.earliest === catheter.since.earliest;
}
