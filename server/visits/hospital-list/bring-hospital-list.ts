import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import type { Doing } from "#server/record/record-event.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import {
  type HospitalList,
  hospitalSheet,
  readWholeList,
} from "#server/visits/hospital-list/read-hospital-list.ts";
import { refuseSlot } from "#server/visits/refuse-slot.ts";
import { recordOfVisit } from "#server/visits/visit-act.ts";
import { visitAsked } from "#server/visits/visit-asked.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Booking, BookingStanding } from "#shared/visit/hospital-list/stand-bookings.ts";
import type { Visit, VisitPlace } from "#shared/visit/visit.ts";

export type BringingBookings = HospitalList & { readonly actId: string };

export type BroughtBookings = {
  readonly actId: string;
  readonly booked: number;
  readonly moved: number;
  readonly known: number;
  readonly asked: number;
  readonly setAside: number;
};

/** Who moved a visit, as its story says it. */
const BY_THE_LIST = "the hospital's list";
const NO_MINUTES = 0;

type Writing = { readonly actId: string; readonly staff: Doing["staff"]; readonly at: Instant };

/** Books a row, or moves the visit that it is about, by the same checks as a form that is typed. */
function write(tx: Tx, { booking, visit }: { booking: Booking; visit: Visit | null }, by: Writing): void {
  const { patient, on, from, where, act } = booking;
  const tubes = booking.tubes.map(({ id }) => ({ tubeId: id, act }));
  const asked = visitAsked(tx, by.at, { patientId: patient.id, tubes, moves: visit });
  const place: VisitPlace = { kind: "elsewhere", where, from };
  const notOn = visit?.notOn ?? asked.notOn;
  refuseSlot(tx, { on, place, asked: asked.asked(NO_MINUTES, notOn) }, clinicSlots(tx, by.at));
  const slot = { on, place, urgent: asked.urgent };
  const of = { ...by, patientId: patient.id, lastSeen: Number.MAX_SAFE_INTEGER };
  if (visit !== null) {
    const payload = { ...slot, visit: visit.id, by: BY_THE_LIST, reason: null };
    recordOfVisit(tx, [{ kind: "visit moved", payload }], of);
    return;
  }
  const named = asked.own.map(({ tube, act: done }) => ({ tube: tube.id, number: tube.number, act: done }));
  const payload = {
    ...slot,
    tubes: named,
    state: "booked" as const,
    needs: [...asked.needs.needs],
    notOn: [...notOn],
    note: null,
  };
  recordOfVisit(tx, [{ kind: "visit booked", payload }], of);
}

const countOf = (rows: readonly BookingStanding[], ...stands: readonly BookingStanding["stands"][]): number =>
  rows.filter((row) => stands.includes(row.stands)).length;

/**
 * Brings every row that leaves no doubt into the book, all of them in one act or none: what is new is booked elsewhere, what the hospital
 * moved is moved. Rows that ask or are set aside stay out. Throws what the list is refused for, `nothing-to-book`, and what stands against a
 * booking by now.
 */
export function bringHospitalList({ db, staff }: Doing, input: BringingBookings): BroughtBookings {
  const { actId, answers } = input;
  const said = { actId, answers, sheet: hospitalSheet(input) };
  return inAct(
    { db, staff, actId, command: "visit: bring in the hospital's list", input: said },
    (tx, at) => {
      const { rows } = readWholeList(tx, at, input);
      const by = { actId, staff, at };
      for (const row of rows) {
        if (row.stands === "books") write(tx, { booking: row.booking, visit: null }, by);
        if (row.stands === "moves") write(tx, row, by);
      }
      const [booked, moved] = [countOf(rows, "books"), countOf(rows, "moves")];
      if (booked + moved === 0) throw new DomainError({ code: "nothing-to-book" });
      return {
        actId,
        booked,
        moved,
        known: countOf(rows, "known", "said above"),
        asked: countOf(rows, "asks"),
        setAside: countOf(rows, "set aside"),
      };
    },
  );
}
