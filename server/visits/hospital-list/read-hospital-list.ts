import type { Database } from "#db/sqlite.ts";
import { readSheetOf } from "#server/sheet/read-sheet.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { hereBooked } from "#server/visits/hospital-list/here-booked.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import { asksOrder, orderIn, orderOf } from "#shared/sheet/date-order.ts";
import type { Encoding } from "#shared/sheet/encoding.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";
import {
  type BookingAnswers,
  type BookingColumns,
  columnRefusals,
  columnsOf,
  isBookingHeading,
} from "#shared/visit/hospital-list/columns.ts";
import { type BookingStanding, standBookings } from "#shared/visit/hospital-list/stand-bookings.ts";

export type HospitalList = {
  readonly bytes: Uint8Array;
  /** Null: found by its marks. */
  readonly encoding: Encoding | null;
  readonly answers: BookingAnswers;
};

/** The sheet of a hospital's list, with what its columns say; null where that has to be mended first. */
export type StandingList = {
  readonly sheet: Sheet;
  readonly columns: BookingColumns;
  /** Whether the day or the month stands first in its dates has to be said, or was. */
  readonly asksOrder: boolean;
  readonly refusals: readonly Refusal[];
  readonly rows: readonly BookingStanding[];
};

export const hospitalSheet = ({ bytes, encoding }: Pick<HospitalList, "bytes" | "encoding">): Sheet =>
  readSheetOf(isBookingHeading, bytes, encoding);

/**
 * How every row of a list stands now, by what has been answered; no row where the columns or the order of its dates are still to be said.
 * Nothing is written. Throws what `readSheetOf` refuses.
 */
export function readHospitalList(db: Database, at: Instant, list: HospitalList): StandingList {
  const { answers } = list;
  const sheet = hospitalSheet(list);
  const columns = columnsOf(sheet.headings, answers.columns);
  const found = orderIn(
    sheet,
    columns.map((column) => column === "on" || column === "birthOn"),
  );
  const shown = found.unclear ?? found.proofs["month first"];
  const args = { row: shown?.row ?? 0, text: shown?.text ?? "" };
  const order: readonly Refusal[] = asksOrder(found, answers.dateOrder)
    ? [{ code: "date-order-asked", field: "dateOrder", args }]
    : [];
  const refusals = [...columnRefusals(columns), ...order];
  const asked = { sheet, columns, refusals, asksOrder: order.length > 0 || answers.dateOrder !== null };
  if (refusals.length > 0) return { ...asked, rows: [] };
  const { now } = clinicSlots(db, at);
  const dateOrder = orderOf(found, answers.dateOrder);
  const reading = { columns, dateOrder, answers, today: now.on, at: now.at };
  return { ...asked, rows: standBookings(sheet.rows, { reading, answers, here: hereBooked(db) }) };
}

/** The same, for whoever is to write by it. Throws what is still to be said. */
export function readWholeList(db: Database, at: Instant, list: HospitalList): StandingList {
  const read = readHospitalList(db, at, list);
  if (read.refusals.length > 0) throw new DomainError(read.refusals);
  return read;
}
