import { visitsOf } from "#db/queries/projections.ts";
import { takenFrom } from "#db/queries/visits.ts";
import type { Tx } from "#db/transaction.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { type Booking, endOf } from "#shared/visit/room.ts";
import { bookingOf, type Visit } from "#shared/visit/visit.ts";

type Of = { readonly patientId: string; readonly visits: readonly Visit[]; readonly today: Day };

const sameSlot = (a: Booking, b: Booking | null): boolean =>
  b !== null && a.roomId === b.roomId && a.on === b.on && a.from === b.from && a.minutes === b.minutes;

/** What comes to a slot with this act: booked, moved, or brought back by an undo. What a death had cancelled comes back where it was. */
function newlyTaking(tx: Tx, { patientId, visits, today }: Of): readonly Booking[] {
  if (visits.length === 0) return [];
  const stood = new Map(visitsOf(tx, patientId).map(({ id, visit }) => [id, visit]));
  return visits.flatMap((visit) => {
    const booking = bookingOf(visit);
    const before = stood.get(visit.id);
    if (booking === null || booking.on < today || before?.reason === "died") return [];
    return before !== undefined && sameSlot(booking, bookingOf(before)) ? [] : [booking];
  });
}

/** No two visits stand in one slot, whoever is first and however the second comes there. Throws `slot-taken`. */
export function refuseTakenSlots(tx: Tx, at: Instant, of: Of): void {
  for (const booking of newlyTaking(tx, of)) {
    const by = takenFrom(tx, booking.on).filter(
      ({ id, roomId, on, from, minutes }) =>
        id !== booking.id &&
        roomId === booking.roomId &&
        on === booking.on &&
        (from ?? 0) < endOf(booking) &&
        booking.from < (from ?? 0) + (minutes ?? 0),
    );
    if (by.length === 0) continue;
    const names = visitNames(tx, clinicSlots(tx, at));
    throw new DomainError({
      code: "slot-taken",
      field: "at",
      args: { room: names.room(booking.roomId), by: by.map(({ id }) => names.visit(id)).join(", ") },
    });
  }
}
