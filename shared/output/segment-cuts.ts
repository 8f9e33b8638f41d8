import { type Instant, instantAt, startOfDay, type Zone } from "#shared/day/instant.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { StoryLine } from "#shared/tube/state.ts";

/** What changes size, mode, suction or position: the low-output counter starts again there. */
export const cutting: readonly EventKind[] = [
  "exchanged",
  "upsized",
  "downsized",
  "salvaged",
  "new puncture",
  "capped",
  "uncapped",
  "clamp trial started",
  "clamp trial passed",
  "clamp trial failed",
  "suction changed",
  "repositioned",
  "partly dislodged",
  "fell out",
];

/** The instant of an entry: its clock time, or the start of its earliest plausible day; null when undated. */
export function instantOf({ when, time }: Pick<StoryLine, "when" | "time">, zone: Zone): Instant | null {
  if (when.earliest === null) return null;
  const timed = time === null ? null : instantAt(when.earliest, time, zone);
  return timed?.ok ? timed.value : startOfDay(when.earliest, zone);
}

/** What ended one segment of a tube's output and began the next, in order of time. */
export const segmentChanges = (
  story: readonly StoryLine[],
  zone: Zone,
): readonly { readonly at: Instant; readonly kind: EventKind }[] =>
  story
    .filter(({ kind }) => cutting.includes(kind))
    .flatMap((line) => {
      const at = instantOf(line, zone);
      return at === null ? [] : [{ at, kind: line.kind }];
    })
    .toSorted((a, b) => a.at - b.at);

/** The instants at which one segment of a tube's output ends and the next begins, in order. */
export const segmentCuts = (story: readonly StoryLine[], zone: Zone): readonly Instant[] =>
  segmentChanges(story, zone).map(({ at }) => at);
