import type { Day } from "#shared/day/day.ts";
import { type Instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import { cutting, instantOf } from "#shared/output/segment-cuts.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { StoryLine, TubeState } from "#shared/tube/state.ts";

/** What begins a count anew beside a cut: the tube's own beginning, and a neighbor in the cavity that came out. */
const alsoBegins: readonly EventKind[] = ["placed", "converted", "removed", "not replaced"];

/** A change after which days are counted anew; `tube` is the number of another tube of the cavity. */
export type Change = StoryLine & { readonly tube: number | null };

/** Every change of this tube and of those that share its cavity. A tube taken over drained before: that begins nothing. */
export const changesOf = (tube: TubeState, mates: readonly TubeState[]): readonly Change[] =>
  [tube, ...mates].flatMap(({ id, number, story }) =>
    story
      .filter(({ kind }) => cutting.includes(kind) || alsoBegins.includes(kind))
      .map((line) => ({ ...line, tube: id === tube.id ? null : number })),
  );

/** On which side of a change a time lies. `mixed`: it may hold both; `maybe`: the change is not dated well enough to say. */
export type Side = "before or mixed" | "maybe" | "since";

type Moment = { readonly day: Day; readonly from: Instant };

/**
 * A day, or a session, against one change. Without a clock time the change may have come at any hour of its day, so that the day is mixed;
 * a date that is a span leaves the days inside it open.
 */
export function sideOf(change: Change, { day, from }: Moment, zone: Zone): Side {
  const { earliest, latest } = change.when;
  if (earliest === null) return "maybe";
  if (change.time !== null) {
    const at = instantOf(change, zone);
    return at !== null && at > from ? "before or mixed" : "since";
  }
  if (earliest >= day) return "before or mixed";
  return latest >= day ? "maybe" : "since";
}

export const dayMoment = (day: Day, zone: Zone): Moment => ({ day, from: startOfDay(day, zone) });

/** The side of all changes together: since every one of them, or not. */
export function sideOfAll(changes: readonly Change[], moment: Moment, zone: Zone): Side {
  const sides = changes.map((change) => sideOf(change, moment, zone));
  if (sides.includes("before or mixed")) return "before or mixed";
  return sides.includes("maybe") ? "maybe" : "since";
}

/** The last of some changes, by the earliest that each may have been. */
export const lastChange = (changes: readonly Change[], zone: Zone): Change | undefined =>
  changes.toSorted((a, b) => (instantOf(a, zone) ?? 0) - (instantOf(b, zone) ?? 0)).at(-1);

/** The last change that a time is not since. */
export const lastChangeNotBefore = (
  changes: readonly Change[],
  moment: Moment,
  zone: Zone,
): Change | undefined =>
  lastChange(
    changes.filter((change) => sideOf(change, moment, zone) === "before or mixed"),
    zone,
  );
