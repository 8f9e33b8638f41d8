import type { EventOf, TubeEvent } from "#shared/tube/event.ts";
import { standingEvents } from "#shared/tube/history.ts";
import { openedTubes } from "#shared/tube/order.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";

export type Join = EventOf<"records joined">;

const isJoin = (event: TubeEvent): event is Join => event.kind === "records joined";

/** The joinings that stand in the stream of the record that stays. */
export const joinsIn = (own: readonly TubeEvent[]): readonly Join[] =>
  own.some(isJoin)
    ? standingEvents(own)
        .map(({ event }) => event)
        .filter(isJoin)
    : [];

/** A stream moved up in the order of recording, so that it follows another. */
export const following = (events: readonly TubeEvent[], offset: number): readonly TubeEvent[] =>
  events.map((event) => ({ ...event, seq: event.seq + offset }));

/**
 * Everything that counts in a record: what was recorded in it, and the streams of the records that were joined into it, each after
 * what stood here when it was joined. In the order of recording.
 */
export function withJoined(
  own: readonly TubeEvent[],
  streamOf: (patientId: string) => readonly TubeEvent[],
): readonly TubeEvent[] {
  const joins = joinsIn(own);
  if (joins.length === 0) return own;
  const theirs = joins.flatMap(({ payload: { from, offset } }) => following(streamOf(from), offset));
  return [...own, ...theirs].toSorted((a, b) => a.seq - b.seq);
}

type Numbered = Pick<TubeState, "id" | "number">;

/** Tubes of the record that is joined whose number is taken, each with the next that is free in both. */
export function numberedAnew(
  here: readonly Numbered[],
  theirs: readonly Numbered[],
): { tube: string; number: number }[] {
  const taken = new Set(here.map(({ number }) => number));
  let last = Math.max(0, ...[...here, ...theirs].map(({ number }) => number));
  return theirs.flatMap(({ id, number }) => {
    if (!taken.has(number)) {
      taken.add(number);
      return [];
    }
    last += 1;
    return [{ tube: id, number: last }];
  });
}

/**
 * What was recorded since the joining and would be lost, or hang in the air, if the two were apart again: entries of the other's tubes,
 * entries of the whole patient, changes of what the other record says.
 */
export function restsOnJoin(
  own: readonly TubeEvent[],
  theirs: readonly TubeEvent[],
  join: Pick<Join, "seq">,
): readonly EventKind[] {
  const ids = new Set(theirs.map(({ id }) => id));
  const tubes = new Set(theirs.flatMap(openedTubes));
  const standing = standingEvents([...own, ...theirs]);
  const later = standing
    .map(({ event }) => event)
    .filter((event) => !ids.has(event.id) && event.seq > join.seq && !isJoin(event))
    // Who has a step is no part of what happened, and passes on by itself when somebody leaves.
    .filter(({ kind }) => kind !== "step assigned")
    .filter((event) => event.tubes.length === 0 || event.tubes.some((id) => tubes.has(id)));
  const alone = new Map(standingEvents(theirs).map(({ event, amendedBy }) => [event.id, amendedBy]));
  const together = new Map(standing.map(({ event, amendedBy }) => [event.id, amendedBy]));
  const changed = [...ids].some((id) => String(alone.get(id)) !== String(together.get(id)));
  return [...later.map(({ kind }) => kind), ...(changed ? (["amended"] as const) : [])];
}
