import { tubeById } from "#db/queries/projections.ts";
import { type VisitLine, visitsOfDays } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { gapsBetween, minutesOf, openSpans, type Room } from "#shared/visit/room.ts";
import { shutOn } from "#shared/words/against.ts";

/** One visit as a day shows it: whose, which tubes by name, where it stands. */
export const visitLine = (db: Database, { visit: row, ...patient }: VisitLine) => ({
  patient: { id: row.patientId, ...patient },
  visit: row.visit,
  settleBy: row.settleBy,
  tubes: row.visit.tubes.map(({ tubeId, act }) => ({
    tubeId,
    act,
    name: tubeById(db, tubeId)?.name ?? "a tube that is no longer on record",
  })),
});

export type ShownVisit = ReturnType<typeof visitLine>;

/** Visits of a span of days by day and room, with when each room is staffed and what of it is free. */
export function viewDays(db: Database, { from, days }: { readonly from: Day; readonly days: number }) {
  const at = now(db);
  const clinic = clinicSlots(db, at);
  const to = addDays(from, days - 1);
  const lines = visitsOfDays(db, { from, to }).map((line) => visitLine(db, line));
  const roomDay = (room: Room, on: Day) => {
    const spans = openSpans(room, on, clinic.calendar);
    const own = lines.filter(
      ({ visit }) => visit.on === on && visit.place.kind === "here" && visit.place.roomId === room.id,
    );
    const taken = own.flatMap(({ visit: { place, state } }) =>
      place.kind === "here" && state !== "cancelled" && state !== "did not attend"
        ? [{ from: place.from, minutes: place.minutes }]
        : [],
    );
    const free = gapsBetween(spans, taken);
    return { room, spans, free, left: minutesOf(free), visits: own };
  };
  const oneDay = (on: Day) => {
    const known = clinic.rooms.map(({ id }) => id);
    return {
      on,
      shut: shutOn(on, clinic.calendar),
      rooms: clinic.rooms.map((room) => roomDay(room, on)),
      /** In the hospital's own book, or in a room that the clinic no longer has. */
      others: lines.filter(
        ({ visit: { on: day, place } }) =>
          day === on && (place.kind === "elsewhere" || !known.includes(place.roomId)),
      ),
    };
  };
  return {
    today: clinic.now.on,
    from,
    days: Array.from({ length: days }, (_, away) => oneDay(addDays(from, away))),
  };
}

export type ViewedDays = ReturnType<typeof viewDays>;
