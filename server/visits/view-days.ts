import { tubeById } from "#db/queries/projections.ts";
import { isAnyFrom, type VisitLine, visitsOfDays } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { type Beside, standsAgainst } from "#server/visits/stands-against.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import type { Why } from "#shared/step/step.ts";
import { gapsBetween, minutesOf, openSpans, type Room } from "#shared/visit/room.ts";
import { stillFree } from "#shared/visit/still-free.ts";
import { toSettle } from "#shared/visit/to-settle.ts";
import { bookingOf } from "#shared/visit/visit.ts";
import { shutOn } from "#shared/words/against.ts";

/** One visit as a day shows it: whose, which tubes by name, where it stands, what is open before it. */
export const visitLine = (db: Database, { visit: row, preparing, ...patient }: VisitLine) => ({
  patient: { id: row.patientId, ...patient },
  visit: row.visit,
  settleBy: row.settleBy,
  toSettle: toSettle((preparing ?? []) as readonly Why[]),
  tubes: row.visit.tubes.map(({ tubeId, act }) => ({
    tubeId,
    act,
    name: tubeById(db, tubeId)?.name ?? "a tube that is no longer on record",
  })),
});

const shown = (db: Database, line: VisitLine, beside: Beside) => {
  const { visit } = line.visit;
  const isPast = visit.on < beside.clinic.now.on;
  return { ...visitLine(db, line), against: isPast ? [] : standsAgainst(visit, beside) };
};

export type ShownVisit = ReturnType<typeof shown>;

/** Nobody comes to it, or nobody came: it takes no room. */
const isGone = ({ visit: { state } }: ShownVisit): boolean =>
  state === "cancelled" || state === "did not attend";

const inRoom = ({ visit: { place } }: ShownVisit, roomId: string): boolean =>
  place.kind === "here" && place.roomId === roomId;

type OfDay = { readonly on: Day; readonly standing: readonly ShownVisit[] };

/** One room on one day: when it is staffed, who comes, what can still be booked. */
function roomDay(room: Room, { on, standing }: OfDay, { clinic }: Beside) {
  const spans = openSpans(room, on, clinic.calendar);
  const visits = standing.filter((line) => inRoom(line, room.id));
  const taken = visits.flatMap(({ visit }) => bookingOf(visit) ?? []);
  const free = stillFree(gapsBetween(spans, taken), on, clinic);
  return { room, spans, free, left: minutesOf(free), visits };
}

function oneDay(on: Day, lines: readonly ShownVisit[], beside: Beside) {
  const { rooms, calendar } = beside.clinic;
  const own = lines.filter(({ visit }) => visit.on === on);
  const standing = own.filter((line) => !isGone(line));
  return {
    on,
    shut: shutOn(on, calendar),
    half: (calendar.halfDays ?? []).find((half) => half.on === on) ?? null,
    rooms: rooms.map((room) => roomDay(room, { on, standing }, beside)),
    /** In the hospital's own book, or in a room that the clinic no longer has. */
    others: standing.filter((line) => !rooms.some(({ id }) => inRoom(line, id))),
    /** Cancelled, or not attended. */
    gone: own.filter(isGone),
  };
}

export type ViewedDay = ReturnType<typeof oneDay>;

/** Visits of a span of days by day and room, with when each room is staffed and what of it can still be booked. */
export function viewDays(db: Database, { from, days }: { readonly from: Day; readonly days: number }) {
  const clinic = clinicSlots(db, now(db));
  const beside = { clinic, names: visitNames(db, clinic) };
  const lines = visitsOfDays(db, { from, to: addDays(from, days - 1) }).map((line) =>
    shown(db, line, beside),
  );
  return {
    today: clinic.now.on,
    from,
    days: Array.from({ length: days }, (_, away) => oneDay(addDays(from, away), lines, beside)),
    /** A calendar file of visits from today on has something in it. */
    isAnyToCome: isAnyFrom(db, clinic.now.on),
  };
}

export type ViewedDays = ReturnType<typeof viewDays>;
