import type { Day } from "#shared/day/day.ts";
import { type Change, changed, changesFor } from "#shared/visit/change.ts";
import type { Slot } from "#shared/visit/may-book.ts";
import {
  bestOfDay,
  bestSlots,
  compareRanks,
  daysAhead,
  reserveBeside,
  type SlotQuestion,
  type SlotRank,
} from "#shared/visit/offers.ts";

/** Why a visit is not offered sooner than it is. */
export type Sooner =
  /** It is offered on the first day that is looked at. */
  | { readonly kind: "first day" }
  /** A sooner one is free, and stands behind by the first of these in which it is worse. */
  | { readonly kind: "free"; readonly slot: Slot; readonly behind: "window" | "reserve" | "target" }
  /** A sooner one is among the better ones that are offered. */
  | { readonly kind: "offered"; readonly slot: Slot }
  /** That day would have one if this one thing were otherwise. */
  | { readonly kind: "blocked"; readonly on: Day; readonly change: Change }
  /** On each sooner day more than one thing stands against it. */
  | { readonly kind: "more than one thing" };

/** One of the slots that are offered, with what it stands on. */
export type Offer = {
  readonly slot: Slot;
  readonly rank: SlotRank;
  readonly place: "inside the window" | "before the earliest" | "past the latest" | "no window";
  readonly takesReserve: boolean;
  /** Minutes of that room's day that stay free. */
  readonly left: number;
  readonly sooner: Sooner;
};

const places = ["inside the window", "before the earliest", "past the latest"] as const;
const parts = ["window", "reserve", "target"] as const;

/** The first thing in which a slot is worse than a better one. Two of one day and room differ in none of them. */
const behindIn = (worse: SlotRank, better: SlotRank): (typeof parts)[number] =>
  parts.find((_, n) => worse[n] !== better[n]) ?? "target";

/** The one thing of a day by which it would have a slot; null where one is not enough. */
export const oneChange = (on: Day, question: SlotQuestion): Change | null =>
  changesFor(on, question).find((change) => bestOfDay(on, changed(question, change)).length > 0) ?? null;

function blockedBefore(days: readonly Day[], question: SlotQuestion): Sooner {
  for (const on of days.toReversed()) {
    const change = oneChange(on, question);
    if (change !== null) return { kind: "blocked", on, change };
  }
  return { kind: "more than one thing" };
}

function soonerThan(rank: SlotRank, question: SlotQuestion): Sooner {
  const days = daysAhead(question).filter((on) => on < rank[3]);
  if (days.length === 0) return { kind: "first day" };
  const [best] = days
    .flatMap((on) => bestOfDay(on, question))
    .toSorted((a, b) => compareRanks(a.rank, b.rank));
  if (best === undefined) return blockedBefore(days, question);
  if (compareRanks(best.rank, rank) < 0) return { kind: "offered", slot: best.slot };
  return { kind: "free", slot: best.slot, behind: behindIn(best.rank, rank) };
}

/** No date is known, or none is asked for: the sooner the better. */
const isOpenWindow = ({ earliest, target, latest }: SlotQuestion["window"]): boolean =>
  earliest === null && target === null && latest === null;

/** The three best slots now, in order, each with what it stands on and why not sooner; none where nothing is free. */
export const offers = (question: SlotQuestion): Offer[] =>
  bestSlots(question).map(({ slot, rank }) => ({
    slot,
    rank,
    place: isOpenWindow(question.window) ? "no window" : places[rank[0]],
    takesReserve: rank[1] === 1,
    left: reserveBeside(slot, question.clinic).left,
    sooner: soonerThan(rank, question),
  }));
