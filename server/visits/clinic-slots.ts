import { clinicOf } from "#db/queries/clinic.ts";
import { takenFrom } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { viewCalendar } from "#server/calendar/view-calendar.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { clockText, dayAt, type Instant } from "#shared/day/instant.ts";
import type { Clinic } from "#shared/visit/may-book.ts";
import type { Minute } from "#shared/visit/room.ts";

const HOUR = 60;

/** The minute of the clinic's day at an instant. */
export function minuteAt(db: Database, at: Instant): Minute {
  const [hour = 0, minute = 0] = clockText(at, clinicOf(db).zone).split(":").map(Number);
  return hour * HOUR + minute;
}

/** Calendar, rooms and what takes their time from today on; not the visit that is to be moved. */
export function clinicSlots(db: Database, at: Instant, moves: string | null = null): Clinic {
  const on = dayAt(at, clinicOf(db).zone);
  const booked = takenFrom(db, on).flatMap(({ id, roomId, on: day, from, minutes }) =>
    id === moves || roomId === null || from === null || minutes === null
      ? []
      : [{ id, roomId, on: day, from, minutes }],
  );
  return {
    calendar: viewCalendar(db).calendar,
    rooms: roomsOf(db).rooms,
    booked,
    now: { on, at: minuteAt(db, at) },
  };
}
