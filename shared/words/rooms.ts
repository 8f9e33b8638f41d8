import type { Ability, Room } from "#shared/visit/room.ts";
import type { RoomsChange } from "#shared/visit/rooms-change.ts";
import { andList } from "#shared/words/and-list.ts";
import { hoursWords } from "#shared/words/hours.ts";

/** "fluoroscopy and sedation"; a room without any says what is left. */
export const canWords = (can: readonly Ability[]): string =>
  can.length === 0 ? "only what needs none of the list" : andList(can);

export const minutesWords = (minutes: number): string => `${minutes} ${minutes === 1 ? "minute" : "minutes"}`;

/** "60 minutes of each day"; "nothing". */
export const reserveWords = (reserve: number): string =>
  reserve === 0 ? "nothing" : `${minutesWords(reserve)} of each day`;

type RoomWords = { readonly word: string; readonly says: (room: Room) => string };

const facts: readonly RoomWords[] = [
  { word: "Name", says: ({ name }) => name },
  { word: "Can do", says: ({ can }) => canWords(can) },
  { word: "Staffed", says: ({ hours }) => hoursWords(hours) },
  { word: "Kept free for urgent visits", says: ({ reserve }) => reserveWords(reserve) },
];

const told = (room: Room): string =>
  facts
    .slice(1)
    .map(({ word, says }) => `${word}: ${says(room)}.`)
    .join(" ");

const differing = (from: Room, to: Room): string =>
  facts
    .filter(({ says }) => says(from) !== says(to))
    .map(({ word, says }) => `${word}: ${says(to)}; before, ${says(from)}.`)
    .join(" ");

/** One room that differs, as a sentence or a few. */
export function roomsChangeWords(change: RoomsChange): string {
  switch (change.code) {
    case "added":
      return `Added ${change.room.name}. ${told(change.room)}`;
    case "taken away":
      return `Taken away: ${change.room.name}. ${told(change.room)}`;
    case "changed":
      return `Changed ${change.from.name}. ${differing(change.from, change.to)}`;
  }
}
