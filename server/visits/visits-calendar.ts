import { clinicOf } from "#db/queries/clinic.ts";
import { bookingsTakenBack, entriesOf } from "#db/queries/events.ts";
import { visitsFrom } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { toEvent } from "#server/record/stored-event.ts";
import { roomsOf } from "#server/rooms/rooms-of.ts";
import { type CalendarVisit, calendarFile } from "#server/visits/calendar-file.ts";
import type { Day } from "#shared/day/day.ts";
import { dayAt, instant, instantAt, type Zone } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { EventOf } from "#shared/tube/event.ts";
import type { Room } from "#shared/visit/room.ts";
import type { Visit, VisitPlace } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";
import { printMinute } from "#shared/words/offers.ts";

type Clinic = { readonly zone: Zone; readonly rooms: readonly Room[] };

/** Where somebody typed that a visit is elsewhere, anything may stand: the file says no more than that. */
const whereIs = (place: VisitPlace, { rooms }: Clinic): string =>
  place.kind === "elsewhere"
    ? "Elsewhere"
    : (rooms.find(({ id }) => id === place.roomId)?.name ?? "A room that is no longer there");

/** Of an hour that clocks skip there is no moment: the day stands alone. */
function whenIs(on: Day, place: VisitPlace, { zone }: Clinic): CalendarVisit["when"] {
  const start = place.from === null ? null : instantAt(on, printMinute(place.from), zone);
  if (start === null || !start.ok) return { kind: "day", on };
  return { kind: "from", start: start.value, minutes: place.kind === "here" ? place.minutes : null };
}

/** "exchange, 2 tubes"; "exchange and check, 2 tubes". */
function actsWords(acts: readonly VisitAct[]): string {
  const named = [...new Set(acts)].join(" and ");
  return `${named}, ${acts.length} ${acts.length === 1 ? "tube" : "tubes"}`;
}

type Told = Pick<CalendarVisit, "id" | "stands"> & {
  readonly patientId: string;
  readonly on: Day;
  readonly place: VisitPlace;
  readonly acts: readonly VisitAct[];
};

const standsAs = ({ state }: Visit): CalendarVisit["stands"] =>
  state === "cancelled" || state === "proposed" ? state : "booked";

/** The visits that stand, cancelled ones too, and the bookings that were taken back: what was sent of them must go again. */
function toldFrom(db: Database, from: Day, { zone }: Clinic): Told[] {
  const standing = visitsFrom(db, from).map(({ id, patientId, visit }): Told => {
    const { on, place, tubes } = visit;
    return { id, patientId, on, place, acts: tubes.map(({ act }) => act), stands: standsAs(visit) };
  });
  const gone = bookingsTakenBack(db, from).map((row): Told => {
    const { payload } = toEvent({ row, tubes: [] }, zone) as EventOf<"visit booked">;
    const { on, place, tubes } = payload;
    const acts = tubes.map(({ act }) => act);
    return { id: row.id, patientId: row.patientId, on, place, acts, stands: "cancelled" };
  });
  return [...standing, ...gone];
}

/**
 * Every visit from today on as one calendar file, without whose it is. The entries of its record are counted as the revision: an entry
 * that is taken back adds one, where the visit's own count would fall and a calendar would keep what it had. Throws
 * `visits-none-to-come`: the standard knows no calendar without a part (RFC 5545, 3.6).
 */
export function visitsCalendar(db: Database): string {
  const at = now(db);
  const { zone } = clinicOf(db);
  const clinic = { zone, rooms: roomsOf(db).rooms };
  const [first, ...more] = toldFrom(db, dayAt(at, zone), clinic).map((told): CalendarVisit => {
    const { id, patientId, on, place, acts, stands } = told;
    const { entries, newest } = entriesOf(db, patientId);
    return {
      id,
      revision: entries,
      where: whereIs(place, clinic),
      when: whenIs(on, place, clinic),
      acts: actsWords(acts),
      stands,
      changedAt: newest ?? instant(at),
    };
  });
  if (first === undefined) throw new DomainError({ code: "visits-none-to-come" });
  return calendarFile([first, ...more], at);
}
