import type { Day } from "#shared/day/day.ts";
import type { EventKind } from "#shared/tube/payloads.ts";

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
]);

/** Whether a dwell strip marks this kind of event. */
export const isMarked = (kind: EventKind): boolean => !deskWork.has(kind);
