import { visitLineById } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import type { Clinic } from "#shared/visit/may-book.ts";
import { printMinute, type VisitNames } from "#shared/words/offers.ts";

/** Rooms by their name, visits by whose they are and when: whoever books sees who has the time. */
export const visitNames = (db: Database, { rooms }: Pick<Clinic, "rooms">): VisitNames => ({
  room: (id) => rooms.find((room) => room.id === id)?.name ?? "a room that is no longer there",
  visit: (id) => {
    const line = visitLineById(db, id);
    if (line === undefined) return "another visit";
    const { visit, familyName, givenName } = line;
    const from = visit.fromMinute === null ? "" : `, ${printMinute(visit.fromMinute)}`;
    return `${familyName}, ${givenName}${from}${visit.minutes === null ? "" : ` for ${visit.minutes} min`}`;
  },
});
