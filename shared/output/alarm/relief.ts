import { type Instant, latestOf, type Zone } from "#shared/day/instant.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { StoryLine } from "#shared/tube/state.ts";

/** A way out was made, or made free again. */
const relieving: readonly EventKind[] = [
  "placed",
  "new puncture",
  "salvaged",
  "unblocked",
  "clamp trial failed",
];

/**
 * When the organ could last begin to empty itself: the placement, the end of a trial that failed, or that a blocked tube ran again, by
 * its unblocking or by the exchange that followed. Null where nobody knows; a routine exchange relieves nothing.
 */
export function relievedAt(story: readonly StoryLine[], zone: Zone): Instant | null {
  const found: Instant[] = [];
  let blocked = false;
  for (const line of story) {
    const renewed = ruleOf(line.kind).resets !== "neither";
    const at = relieving.includes(line.kind) || (blocked && renewed) ? instantOf(line, zone) : null;
    if (at !== null) found.push(at);
    blocked = line.kind === "blocked" || (blocked && !renewed && line.kind !== "unblocked");
  }
  return found.length === 0 ? null : latestOf(...found);
}
