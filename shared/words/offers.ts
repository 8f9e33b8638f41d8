import { printDay, weekdayNames } from "#shared/day/print-day.ts";
import type { Change } from "#shared/visit/change.ts";
import type { Slot } from "#shared/visit/may-book.ts";
import type { Minute } from "#shared/visit/room.ts";
import type { Offer, Sooner } from "#shared/visit/sooner.ts";

/** 570 is "09:30". */
export const printMinute = (at: Minute): string =>
  `${String(Math.floor(at / 60)).padStart(2, "0")}:${String(at % 60).padStart(2, "0")}`;

/** Names of what the clinic has, by id; an id that is not named stands for itself. */
export type VisitNames = {
  readonly room: (id: string) => string;
  /** Whose visit it is that takes a room. */
  readonly visit: (id: string) => string;
};

const weekdayName = (weekday: number): string => weekdayNames[weekday - 1] ?? "";

/** "Wed 11 Nov 2026, 09:30, Room 1". */
export const slotWords = ({ on, from, roomId }: Slot, { room }: VisitNames): string =>
  `${printDay(on)}, ${printMinute(from)}, ${room(roomId)}`;

const halfWords = (half: "morning" | "afternoon" | null): string => (half === null ? "" : ` ${half}s`);

/** The one thing that would have to be otherwise, as the end of a sentence. */
export function changeWords(change: Change, names: VisitNames): string {
  switch (change.code) {
    case "patient-comes":
      return `the patient could come on ${weekdayName(change.weekday)}${halfWords(change.half)}`;
    case "ready-sooner":
      return `nothing had to be waited for until ${printDay(change.on)}, ${printMinute(change.at)}`;
    case "whole-day":
      return `the clinic were open all day (${change.reason})`;
    case "clinic-opens":
      return change.because.code === "closure"
        ? `the clinic were not closed (${change.because.reason})`
        : `the clinic were open on ${weekdayName(change.because.weekday)}`;
    case "visit-moves":
      return `${names.visit(change.bookingId)} were not in ${names.room(change.roomId)}`;
    case "room-could":
      return `${names.room(change.roomId)} had ${change.lacks.join(" and ")}`;
    case "room-staffed":
      return `${names.room(change.roomId)} were staffed on ${weekdayName(change.weekday)} from ${printMinute(change.hours.from)} to ${printMinute(change.hours.to)}`;
  }
}

const behindWords = {
  window: "is outside the window",
  reserve: "takes what is kept for urgent visits",
  target: "is farther from the target",
} as const;

/** Why not sooner, in one sentence. */
export function soonerWords(sooner: Sooner, names: VisitNames): string {
  switch (sooner.kind) {
    case "first day":
      return "It is today.";
    case "free":
      return `${slotWords(sooner.slot, names)} is free, and ${behindWords[sooner.behind]}.`;
    case "offered":
      return `${slotWords(sooner.slot, names)} is the better one.`;
    case "blocked":
      return `${printDay(sooner.on)} would have one if ${changeWords(sooner.change, names)}.`;
    case "more than one thing":
      return "More than one thing stands against each sooner day.";
  }
}

/** Of several tubes, those without a date are named: a slot is not said to be inside a window that nobody knows. */
function windowWords({ place }: Pick<Offer, "place">, undated: readonly string[]): string {
  if (place === "no window") return "no window can be told: the sooner the better";
  return undated.length === 0 ? place : `${place} of the others; cannot tell for ${undated.join(", ")}`;
}

/** What a slot stands on: its place in the window, and what it leaves for urgent visits. `undated`: names of tubes that no step gives a date. */
export const placeWords = (offer: Offer, undated: readonly string[]): string =>
  `${windowWords(offer, undated)}; ${offer.takesReserve ? "takes from" : "keeps"} what is kept for urgent visits: ${offer.left} min of that day stay free`;
