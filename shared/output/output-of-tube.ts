import { endOfDay, type Instant, type Zone } from "#shared/day/instant.ts";
import type { FlushRow } from "#shared/output/net-day.ts";
import { type NetDays, netDays } from "#shared/output/net-days.ts";
import type { Reading } from "#shared/output/reading.ts";
import { instantOf, segmentCuts } from "#shared/output/segment-cuts.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A flush counts as ordered when the order says so; with no order recorded, when the kind's example has one. */
export const flushIsOrdered = (tube: TubeState): boolean =>
  tube.flushOrder.certainty === "unknown"
    ? kindOf(tube.kind).flush !== null
    : tube.flushOrder.value.toLowerCase() !== "none";

/** The instant of the placement, where its clock time is known: half a day more or less would change a first rate. */
export function placedAt(tube: TubeState, zone: Zone): Instant | null {
  const opening = tube.story[0];
  return opening === undefined || opening.time === null ? null : instantOf(opening, zone);
}

export type Measured = {
  /** The standing readings of this tube. */
  readonly readings: readonly Reading[];
  readonly zone: Zone;
  readonly row: FlushRow;
  readonly now: Instant;
};

/** Net days of one tube: its placement, its end, and what cut its output are in its record. */
export function outputOfTube(tube: TubeState, { readings, zone, row, now }: Measured): NetDays {
  const ended = tube.ending?.when.latest ?? null;
  return netDays({
    readings,
    zone,
    flushOrdered: flushIsOrdered(tube),
    cuts: segmentCuts(tube.story, zone),
    placedAt: placedAt(tube, zone),
    outAt: ended === null ? null : endOfDay(ended, zone),
    row,
    now,
  });
}
