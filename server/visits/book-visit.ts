import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { refuseSlot } from "#server/visits/refuse-slot.ts";
import { recordOfVisit, type VisitRecorded, type VisitSubmit, visitOf } from "#server/visits/visit-act.ts";
import { visitAsked } from "#server/visits/visit-asked.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { entryOf } from "#shared/record/form.ts";
import { bookingForm } from "#shared/record/visit/booking-form.ts";
import { movingForm } from "#shared/record/visit/moving-form.ts";
import { type ActOnTube, openTubes, type VisitPlace } from "#shared/visit/visit.ts";

export type BookingVisit = VisitSubmit & {
  readonly tubes: readonly ActOnTube[];
  readonly urgent: boolean;
  readonly texts: Texts;
};

export type MovingVisit = VisitSubmit & {
  readonly visitId: string;
  readonly urgent: boolean;
  readonly texts: Texts;
};

const minutesIn = (place: VisitPlace): number => (place.kind === "here" ? place.minutes : 0);

/**
 * Books a visit in the slot that was typed or picked, held against calendar, rooms and what is booked in the same transaction, so that
 * two cannot take one slot. Throws what stands against it, each beside its field; nothing is written then.
 */
export function bookVisit({ db, staff }: Doing, input: BookingVisit): VisitRecorded {
  const { actId, patientId, tubes, urgent, texts } = input;
  return inAct({ db, staff, actId, command: "visit: book", input }, (tx, at) => {
    const clinic = clinicSlots(tx, at);
    const asked = visitAsked(tx, at, { patientId, tubes, moves: null });
    const { minutes, needs } = asked.needs;
    const context = { today: clinic.now.on, rooms: clinic.rooms, minutes, notOn: asked.notOn };
    const { notOn, ...entry } = entryOf(bookingForm.read(texts, context));
    refuseSlot(tx, { ...entry, asked: asked.asked(minutesIn(entry.place), notOn) }, clinic);
    const named = asked.own.map(({ tube, act }) => ({ tube: tube.id, number: tube.number, act }));
    const payload = { ...entry, tubes: named, urgent, needs: [...needs], notOn: [...notOn] };
    return recordOfVisit(tx, [{ kind: "visit booked", payload }], { ...input, staff, at });
  });
}

/** Moves a visit, checked again from the start. Throws what stands against the new slot; the old one stands then. */
export function moveVisit({ db, staff }: Doing, input: MovingVisit): VisitRecorded {
  const { actId, patientId, visitId, urgent, texts } = input;
  return inAct({ db, staff, actId, command: "visit: move", input }, (tx, at) => {
    const visit = visitOf(tx, { patientId, visitId });
    const clinic = clinicSlots(tx, at, visitId);
    const asked = visitAsked(tx, at, { patientId, tubes: openTubes(visit), moves: visit });
    const minutes = visit.place.kind === "here" ? visit.place.minutes : asked.needs.minutes;
    const entry = entryOf(movingForm.read(texts, { today: clinic.now.on, rooms: clinic.rooms, minutes }));
    refuseSlot(tx, { ...entry, asked: asked.asked(minutesIn(entry.place), visit.notOn) }, clinic);
    const payload = { ...entry, visit: visitId, urgent };
    return recordOfVisit(tx, [{ kind: "visit moved", payload }], { ...input, staff, at });
  });
}
