import { type Day, earlier, later } from "#shared/day/day.ts";
import { onDay, type When } from "#shared/day/when.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { mayFollowEnd, opensTube } from "#shared/tube/event-kinds.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { EventKind } from "#shared/tube/payloads.ts";

/** Before every day: where a tube opens whose placement nobody can date. */
const EVER = "0000-00-00" as Day;
const MIDNIGHT = "00:00";

/** A conversion opens a tube too, but out of one that must be there. */
const startsTube = (kind: EventKind): boolean => opensTube(kind) && kind !== "converted";

/** The tubes whose record the event opens. */
export const openedTubes = (event: TubeEvent): readonly string[] =>
  event.kind === "converted" ? [event.payload.opens] : opensTube(event.kind) ? event.tubes : [];

/** The tubes that must have a record already. */
function tubesBefore(event: TubeEvent): readonly string[] {
  if (event.kind === "converted") return [event.payload.closes];
  if (event.kind === "reconciled") return event.payload.sides.map(({ tube }) => tube);
  return opensTube(event.kind) ? [] : event.tubes;
}

const endingKinds: readonly EventKind[] = [
  "removed",
  "not replaced",
  "converted",
  "accepted elsewhere",
  "follow-up ended",
  "died",
];
const ends = (kind: EventKind): boolean => endingKinds.includes(kind);

/** The tubes that have not ended when this happens. */
function tubesAlive(event: TubeEvent): readonly string[] {
  if (opensTube(event.kind)) return openedTubes(event);
  return ends(event.kind) || mayFollowEnd(event.kind) ? [] : event.tubes;
}

const latestOf = (days: readonly (Day | undefined)[]): Day | undefined =>
  days.reduce((a, b) => (a === undefined || b === undefined ? (a ?? b) : later(a, b)), undefined);

/** The last day, within what the ending leaves open, on which its tubes had not ended; a death ends every tube. */
function lastAlive(ending: TubeEvent, all: readonly Standing[]): Day | undefined {
  const tubes = tubesBefore(ending);
  const bound = ending.when.latest ?? ending.recordedOn;
  return latestOf(
    all.map(({ event }) => {
      const alive = tubesAlive(event).some((tube) => ending.kind === "died" || tubes.includes(tube));
      return alive && event.when.earliest !== null && event.when.earliest <= bound
        ? event.when.earliest
        : undefined;
    }),
  );
}

/** The part of a span that lies on or after a day: an exchange "in March" of a tube placed on the 10th. */
function onOrAfter(when: When, floor: Day | undefined): When {
  if (floor === undefined || when.precision === "unknown" || when.earliest >= floor) return when;
  if (when.latest < floor) return when;
  return when.latest === floor ? onDay(floor) : { ...when, precision: "span", earliest: floor };
}

type Opened = ReadonlyMap<string, Day>;
type Settled = { readonly item: Standing; readonly day: Day; readonly undated: boolean };

/**
 * An entry cut to what is possible, with the day that it is folded at: nothing happens to a tube before it opens or after it
 * ends. A date that nobody knows lies before its recording, and is folded there: an exchange of unknown date leaves a clock
 * of unknown date, and is not lost behind an older one.
 */
function settle(item: Standing, opened: Opened, all: readonly Standing[]): Settled {
  const { event } = item;
  const before = tubesBefore(event).map((tube) => opened.get(tube));
  const floor = latestOf([...before, ends(event.kind) ? lastAlive(event, all) : undefined]);
  const when = onOrAfter(item.when, floor);
  const undated = when.earliest === null && !startsTube(event.kind);
  const day = when.earliest ?? (undated ? latestOf([floor, event.recordedOn]) : undefined) ?? EVER;
  return { item: { ...item, when }, day, undated };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const asPutInOrder = (a: TubeEvent, b: TubeEvent): number => a.daySequence - b.daySequence || a.seq - b.seq;

/** The day from which each tube has a record. A conversion comes after the opening of the tube that it closes. */
function openingDays(all: readonly Standing[]): Opened {
  const opened = new Map<string, Day>();
  const note = (item: Standing): void => {
    const { day } = settle(item, opened, all);
    if (day === EVER) return;
    for (const tube of openedTubes(item.event)) opened.set(tube, earlier(day, opened.get(tube) ?? day));
  };
  const first = ({ event }: Standing): Day => event.when.earliest ?? event.recordedOn;
  for (const item of all) if (startsTube(item.event.kind)) note(item);
  const conversions = all.filter(({ event }) => event.kind === "converted");
  for (const item of conversions.toSorted(
    (a, b) => compare(first(a), first(b)) || asPutInOrder(a.event, b.event),
  ))
    note(item);
  return opened;
}

/**
 * Fold order: earliest plausible day, then clock time, then sequence within the day, then recorded sequence. An entry without a
 * clock time stands right after what was put before it on that day, so that "fell out 10:00" and then "salvaged" stay in order.
 */
export function inOrder(standing: readonly Standing[]): Standing[] {
  const opened = openingDays(standing);
  const settled = standing
    .map((item) => settle(item, opened, standing))
    .toSorted(
      (a, b) =>
        compare(a.day, b.day) ||
        Number(a.undated) - Number(b.undated) ||
        asPutInOrder(a.item.event, b.item.event),
    );
  let reached = { day: "", time: MIDNIGHT };
  const timed = settled.map(({ item, day }) => {
    if (day !== reached.day) reached = { day, time: MIDNIGHT };
    const time = item.when.precision === "day" ? (item.event.time ?? reached.time) : reached.time;
    if (time > reached.time) reached = { day, time };
    return { item, moment: `${day} ${time}` };
  });
  return timed.toSorted((a, b) => compare(a.moment, b.moment)).map(({ item }) => item);
}
