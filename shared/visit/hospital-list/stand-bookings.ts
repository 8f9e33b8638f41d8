import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { searchWord } from "#shared/record/patient/search-text.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import type { BookingAnswers } from "#shared/visit/hospital-list/columns.ts";
import {
  type BookingReason,
  type ReadBooking,
  type ReadingBookings,
  readBooking,
} from "#shared/visit/hospital-list/read-booking.ts";
import { type BookingOption, tubesMeant } from "#shared/visit/hospital-list/which-tubes.ts";
import {
  type HereBooked,
  type HerePatient,
  type HereTube,
  whomMeant,
} from "#shared/visit/hospital-list/whom.ts";
import { isOpenVisit, openTubes, type Visit } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

/** What a row books: for whom, which tubes, what is done, when and where. */
export type Booking = Pick<ReadBooking, "row" | "on" | "from" | "where"> & {
  readonly patient: HerePatient;
  readonly tubes: readonly HereTube[];
  readonly act: VisitAct;
};

/** How one row of a hospital's list would stand. */
export type BookingStanding = { readonly row: number } & (
  | { readonly stands: "books"; readonly booking: Booking }
  | { readonly stands: "moves"; readonly booking: Booking; readonly visit: Visit }
  | { readonly stands: "known"; readonly booking: Booking }
  | { readonly stands: "said above"; readonly above: number }
  | {
      readonly stands: "asks";
      readonly cells: readonly string[];
      readonly patient: HerePatient;
      readonly options: readonly BookingOption[];
    }
  | {
      readonly stands: "set aside";
      readonly cells: readonly string[];
      readonly reasons: readonly BookingReason[];
    }
);

export type StandBookings = {
  readonly reading: ReadingBookings;
  readonly answers: Pick<BookingAnswers, "act" | "choices">;
  readonly here: HereBooked;
};

const aside = ({ row, cells }: SheetLine, ...refusals: readonly Refusal[]): BookingStanding => ({
  row,
  stands: "set aside",
  cells,
  reasons: refusals.map((refusal) => ({ label: null, refusal })),
});

type Slot = { readonly on: Day; readonly from: number | null; readonly where: string };

/** One day and one place, and no other time: a list that says no time says no other. */
const isSameSlot = (one: Slot, other: Slot): boolean =>
  one.on === other.on &&
  searchWord(one.where) === searchWord(other.where) &&
  (one.from === other.from || other.from === null);

const idsOf = (tubes: readonly { readonly id: string }[]): string =>
  tubes
    .map(({ id }) => id)
    .toSorted()
    .join();

/** Whether a visit is for these tubes and no others. */
const isFor = (visit: Visit, tubes: readonly HereTube[]): boolean =>
  idsOf(openTubes(visit).map(({ tubeId }) => ({ id: tubeId }))) === idsOf(tubes);

/** What is booked for the tubes already: nothing, the same, another day or place of it, or a visit that is not the hospital's to move. */
function besideBooked(line: SheetLine, booking: Booking): BookingStanding {
  const { row } = line;
  const { patient, tubes } = booking;
  const [visit, another] = patient.visits
    .filter(isOpenVisit)
    .filter((one) => openTubes(one).some(({ tubeId }) => tubes.some(({ id }) => id === tubeId)));
  if (visit === undefined) return { row, stands: "books", booking };
  if (another !== undefined || visit.place.kind === "here" || !isFor(visit, tubes)) {
    const twice = tubes.find(({ id }) => openTubes(visit).some(({ tubeId }) => tubeId === id));
    const args = { tube: twice?.name ?? "tube", day: printDay(visit.on) };
    return aside(line, { code: "visit-tube-booked", args });
  }
  const { from, where } = visit.place;
  return isSameSlot({ on: visit.on, from, where }, booking)
    ? { row, stands: "known", booking }
    : { row, stands: "moves", booking, visit };
}

function standOf(line: SheetLine, { reading, answers, here }: StandBookings): BookingStanding {
  const { row, cells } = line;
  const read = readBooking(line, reading);
  if (!read.ok) return { row, stands: "set aside", cells, reasons: read.reasons };
  const whom = whomMeant(read.booking, here);
  if (!whom.ok) return aside(line, whom.refusal);
  const patient = whom.value;
  const whose = `${patient.familyName}, ${patient.givenName}`;
  if (patient.tubes.length === 0) return aside(line, { code: "booking-without-tube", args: { whose } });
  const meant = tubesMeant(read.booking, patient.tubes, answers);
  if (!meant.ok) return { row, stands: "asks", cells, patient, options: meant.options };
  const { on, from, where } = read.booking;
  return besideBooked(line, { row, on, from, where, patient, tubes: meant.tubes, act: meant.act });
}

const bookingIn = (standing: BookingStanding): Booking | null =>
  "booking" in standing ? standing.booking : null;

const isSaidTwice = (one: Booking, other: Booking): boolean =>
  idsOf(one.tubes) === idsOf(other.tubes) &&
  one.act === other.act &&
  isSameSlot(one, other) &&
  isSameSlot(other, one);

type ByTube = ReadonlyMap<string, readonly Booking[]>;

function byTube(standings: readonly BookingStanding[]): ByTube {
  const found = new Map<string, Booking[]>();
  for (const booking of standings.flatMap((standing) => bookingIn(standing) ?? []))
    for (const { id } of booking.tubes) found.set(id, [...(found.get(id) ?? []), booking]);
  return found;
}

/** Of rows that book one tube: the later of two that say the same is said above; where they differ, nobody here can tell which holds. */
function besideRows(line: SheetLine, standing: BookingStanding, booked: ByTube): BookingStanding {
  const own = bookingIn(standing);
  if (own === null) return standing;
  const others = own.tubes.flatMap(({ id }) => booked.get(id) ?? []).filter(({ row }) => row !== own.row);
  const differing = others.filter((other) => !isSaidTwice(other, own)).map(({ row }) => row);
  if (differing.length > 0) {
    const rows = [...new Set(differing)].join(", ");
    return aside(line, { code: "booking-twice", args: { rows } });
  }
  const above = others.find(({ row }) => row < own.row);
  return above === undefined ? standing : { row: own.row, stands: "said above", above: above.row };
}

/** How every row of a hospital's list of bookings would stand beside what is booked here. Nothing is guessed, and no row counts twice. */
export function standBookings(
  lines: readonly SheetLine[],
  beside: StandBookings,
): readonly BookingStanding[] {
  const standings = lines.map((line) => standOf(line, beside));
  const booked = byTube(standings);
  return lines.map((line, at) => besideRows(line, standings[at] ?? aside(line), booked));
}
