import type { Day } from "#shared/day/day.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { StoryLine, TubeState } from "#shared/tube/state.ts";

/** One event as a dwell strip marks it, at its earliest plausible day. */
export type StripMark = { readonly on: Day; readonly kind: EventKind };

/** Written at a desk: part of the tube's story, but nothing that happened to the tube. */
const deskWork: ReadonlySet<EventKind> = new Set([
  "facts noted",
  "verified",
  "clock dated",
  "plan recorded",
  "exchange planned",
  "conditions noted",
  "step assigned",
  "called",
  "dates confirmed",
  "amended",
  "voided",
  "removal decided",
  "handed over",
  "transferred",
]);

/** Events from the start of the catheter's clock on, without that start itself: what a dwell strip marks. */
export function marksOf({ catheter, story }: Pick<TubeState, "catheter" | "story">): StripMark[] {
  const since = catheter.since.earliest;
  const mark = ({ eventId, kind, when }: StoryLine): StripMark[] => {
    const on = when.earliest;
    if (on === null || deskWork.has(kind) || eventId === catheter.eventId) return [];
    return since !== null && on < since ? [] : [{ on, kind }];
  };
  return story.flatMap(mark);
}
