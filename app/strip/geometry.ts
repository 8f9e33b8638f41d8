import { type Axis, type Place, placeOf } from "#app/strip/axis.ts";
import { type Day, daysBetween, later } from "#shared/day/day.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { StripMark } from "#shared/tube/strip.ts";

/** What a dwell strip is drawn from. Days that nobody knows are null. */
export type StripFacts = {
  readonly today: Day;
  /** Ends of the day on which the catheter's clock began; both null when undated. */
  readonly clockEarliest: Day | null;
  readonly clockLatest: Day | null;
  /** The day on which the tube came out; null while it is in. */
  readonly outOn: Day | null;
  readonly earliest: Day | null;
  readonly target: Day | null;
  readonly latest: Day | null;
  readonly marks: readonly StripMark[];
};

export type Reach = { readonly from: Place; readonly to: Place };

/** Where a clock began: a day; a span of days, of which one is right; before the axis; or nobody knows. */
export type Start =
  | { readonly kind: "day"; readonly at: Place }
  | ({ readonly kind: "span" } & Reach)
  | { readonly kind: "before the axis" }
  | { readonly kind: "unknown" };

/** One diamond: everything that happened on its day. */
export type DrawnMark = { readonly at: Place; readonly on: Day; readonly kinds: readonly EventKind[] };

/** A dwell strip in percent of its axis. What the axis does not reach is null, or cut at the edge that it crosses. */
export type Strip = {
  readonly start: Start;
  /** In place for certain: from the last day on which it can have begun to today, or to the day it came out. */
  readonly age: Reach | null;
  /** The part of its time in place that lies past the latest date. */
  readonly late: Reach | null;
  /** From earliest to target. */
  readonly hatched: Reach | null;
  /** From target to latest. */
  readonly open: Reach | null;
  readonly target: Place | null;
  readonly latest: Place | null;
  readonly marks: readonly DrawnMark[];
};

type Drawn = { readonly axis: Axis; readonly today: Day };

const at = ({ axis, today }: Drawn, day: Day): Place => placeOf(daysBetween(today, day), axis);

const isOn = (place: Place): boolean => place >= 0 && place <= 100;

function placeOn(drawn: Drawn, day: Day | null): Place | null {
  if (day === null) return null;
  const place = at(drawn, day);
  return isOn(place) ? place : null;
}

/** From one day to another, cut at the ends of the axis; null when nothing of it is on the axis. */
function reachOn(drawn: Drawn, from: Day | null, to: Day | null): Reach | null {
  if (from === null || to === null || from >= to) return null;
  const reach = { from: Math.max(0, at(drawn, from)), to: Math.min(100, at(drawn, to)) };
  return reach.from < reach.to ? reach : null;
}

/** How far a band that is cut runs out over the end of its axis, in percent, so that its own edge is out of sight there. */
const OVER = 1;

/** The same for a band with edges: cut open, so that a cut does not look like its end. */
function bandOn(drawn: Drawn, from: Day | null, to: Day | null): Reach | null {
  const reach = reachOn(drawn, from, to);
  if (reach === null || from === null || to === null) return null;
  return {
    from: at(drawn, from) < 0 ? -OVER : reach.from,
    to: at(drawn, to) > 100 ? 100 + OVER : reach.to,
  };
}

/** A clock's beginning; its span may reach out over the left end, so that the cut shows. */
export function startOn(drawn: Drawn, earliest: Day | null, latest: Day | null): Start {
  if (earliest === null || latest === null) return { kind: "unknown" };
  const from = at(drawn, earliest);
  const to = at(drawn, latest);
  if (to < 0) return { kind: "before the axis" };
  return earliest === latest ? { kind: "day", at: from } : { kind: "span", from, to };
}

function marksOn(drawn: Drawn, marks: readonly StripMark[]): DrawnMark[] {
  const kindsOn = new Map<Day, Set<EventKind>>();
  for (const { on, kind } of marks) kindsOn.set(on, (kindsOn.get(on) ?? new Set()).add(kind));
  return [...kindsOn]
    .map(([on, kinds]) => ({ on, at: at(drawn, on), kinds: [...kinds] }))
    .filter((mark) => isOn(mark.at))
    .toSorted((a, b) => a.at - b.at);
}

/** Where everything of one tube stands on an axis. Whoever draws it adds only heights and strokes. */
export function drawStrip(facts: StripFacts, axis: Axis): Strip {
  const { today, clockEarliest, clockLatest, earliest, target, latest } = facts;
  const drawn = { axis, today };
  const until = facts.outOn ?? today;
  const lateFrom = latest === null || clockLatest === null ? latest : later(latest, clockLatest);
  return {
    start: startOn(drawn, clockEarliest, clockLatest),
    age: reachOn(drawn, clockLatest, until),
    late: reachOn(drawn, lateFrom, until),
    hatched: bandOn(drawn, earliest, target ?? latest),
    open: bandOn(drawn, target, latest),
    target: placeOn(drawn, target),
    latest: placeOn(drawn, latest),
    marks: marksOn(drawn, facts.marks),
  };
}
