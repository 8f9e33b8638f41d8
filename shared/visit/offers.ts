import { addDays, type Day, daysBetween } from "#shared/day/day.ts";
import { type Asked, allAgainst, type Clinic, type Slot } from "#shared/visit/may-book.ts";
import {
  type Booking,
  gapsBetween,
  halfOf,
  minutesOf,
  NOON,
  openSpans,
  type Room,
} from "#shared/visit/room.ts";
import { GRID, stillFree } from "#shared/visit/still-free.ts";
import type { JointWindow } from "#shared/visit/window.ts";

/** Everything that three slots are chosen by. */
export type SlotQuestion = {
  readonly clinic: Clinic;
  readonly asked: Asked;
  readonly window: JointWindow;
  /** An urgent visit takes the reserve; it is for that. */
  readonly urgent: boolean;
  /** How many days from today on are looked at. */
  readonly days: number;
};

/** Minutes from now on within which none is offered: nobody comes sooner, and it would be past by the time that somebody says yes. */
export const NOTICE = 15;

/**
 * Where a slot stands among others, smaller first: inside the window, before it, after its latest; of a planned visit, the reserve kept or
 * taken from; days from the target; the day; the minute; the room in the clinic's own order. Compared from the left.
 */
export type SlotRank = readonly [
  window: 0 | 1 | 2,
  reserve: 0 | 1,
  fromTarget: number,
  on: Day,
  at: number,
  room: number,
];

/** Minutes of that room and day that would be free beside the slot, and those that planned visits are to leave. */
export type Reserve = { readonly left: number; readonly kept: number };

const takenIn = ({ booked }: Clinic, roomId: string, on: Day): Booking[] =>
  booked.filter((one) => one.roomId === roomId && one.on === on);

/** What a visit in that slot would leave of what is still to come of the room's day. An unknown room leaves nothing. */
export function reserveBeside(slot: Slot, clinic: Clinic): Reserve {
  const room = clinic.rooms.find(({ id }) => id === slot.roomId);
  if (room === undefined) return { left: 0, kept: 0 };
  const gaps = gapsBetween(openSpans(room, slot.on, clinic.calendar), takenIn(clinic, room.id, slot.on));
  return { left: minutesOf(stillFree(gaps, slot.on, clinic)) - slot.minutes, kept: room.reserve };
}

function inWindow(on: Day, { earliest, latest }: JointWindow): 0 | 1 | 2 {
  if (latest !== null && on > latest) return 2;
  return earliest !== null && on < earliest ? 1 : 0;
}

/** Without a target, the sooner inside the window the better. */
const aim = ({ window, clinic }: SlotQuestion): Day => window.target ?? window.earliest ?? clinic.now.on;

export function slotRank(slot: Slot, question: SlotQuestion): SlotRank {
  const { clinic, window, urgent } = question;
  const { left, kept } = reserveBeside(slot, clinic);
  return [
    inWindow(slot.on, window),
    !urgent && left < kept ? 1 : 0,
    urgent ? daysBetween(clinic.now.on, slot.on) : Math.abs(daysBetween(aim(question), slot.on)),
    slot.on,
    slot.from,
    clinic.rooms.findIndex(({ id }) => id === slot.roomId),
  ];
}

export function compareRanks(a: SlotRank, b: SlotRank): number {
  const place = a.findIndex((value, n) => value !== b[n]);
  if (place < 0) return 0;
  return (a[place] ?? 0) < (b[place] ?? 0) ? -1 : 1;
}

/** The first minute on the grid in a gap, from a minute on, at which so many minutes are free. */
function firstIn(gap: { from: number; to: number }, from: number, minutes: number): number | null {
  const at = Math.ceil(Math.max(gap.from, from) / GRID) * GRID;
  return at + minutes <= gap.to ? at : null;
}

/** The earliest slot of a room in each half of a day; what stands against it is asked of each. */
function slotsOfDay(room: Room, on: Day, { clinic, asked }: SlotQuestion): Slot[] {
  const { now } = clinic;
  const { readyFrom, minutes } = asked;
  const gaps = gapsBetween(openSpans(room, on, clinic.calendar), takenIn(clinic, room.id, on));
  const soonest = Math.max(on === now.on ? now.at + NOTICE : 0, readyFrom?.on === on ? readyFrom.at : 0);
  return [soonest, Math.max(soonest, NOON)].flatMap((from, half): Slot[] => {
    const starts = gaps.flatMap((gap) => firstIn(gap, from, minutes) ?? []);
    const at = starts.find((start) => halfOf(start) === (half === 0 ? "morning" : "afternoon"));
    if (at === undefined) return [];
    const slot = { roomId: room.id, on, from: at, minutes };
    return allAgainst(slot, asked, clinic).length === 0 ? [slot] : [];
  });
}

/** The days that are looked at, today first. */
export const daysAhead = ({ clinic, days }: SlotQuestion): Day[] =>
  Array.from({ length: Math.max(0, days) }, (_, away) => addDays(clinic.now.on, away));

type Ranked = { readonly slot: Slot; readonly rank: SlotRank };

/** The best slot of each half of one day, the better first. */
export function bestOfDay(on: Day, question: SlotQuestion): Ranked[] {
  const ranked = question.clinic.rooms
    .flatMap((room) => slotsOfDay(room, on, question))
    .map((slot) => ({ slot, rank: slotRank(slot, question) }))
    .toSorted((a, b) => compareRanks(a.rank, b.rank));
  return ranked.filter(
    ({ slot }, n) => ranked.findIndex((other) => halfOf(other.slot.from) === halfOf(slot.from)) === n,
  );
}

/** The best slots, at most one for each half of a day, so that a patient who cannot come on one has another to choose. */
export const bestSlots = (question: SlotQuestion, count = 3): Ranked[] =>
  daysAhead(question)
    .flatMap((on) => bestOfDay(on, question))
    .toSorted((a, b) => compareRanks(a.rank, b.rank))
    .slice(0, count);
