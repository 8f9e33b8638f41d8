import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import type { Parsed, Refusal } from "#shared/errors/refusal.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { minuteField } from "#shared/record/field/minute-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { type DateOrder, LEFT_OUT } from "#shared/sheet/answers.ts";
import { dateCell } from "#shared/sheet/date-cell.ts";
import { plainCell, saysUnknown } from "#shared/sheet/plain-cell.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import {
  type BookingAnswers,
  type BookingColumns,
  type BookingField,
  bookingLabel,
} from "#shared/visit/hospital-list/columns.ts";
import { type WhatSaid, whatSaid } from "#shared/visit/hospital-list/say-what.ts";
import type { Minute } from "#shared/visit/room.ts";

/** What is wrong with a row, under the heading where it is mended; null where it concerns the row. */
export type BookingReason = { readonly label: string | null; readonly refusal: Refusal };

/** A row as it was understood. */
export type ReadBooking = {
  readonly row: number;
  readonly number: string | null;
  /** The family's name alone, or the whole name as it stands. */
  readonly name: { readonly text: string; readonly whole: boolean } | null;
  readonly birthOn: Day | null;
  readonly on: Day;
  readonly from: Minute | null;
  readonly where: string;
  readonly what: WhatSaid;
};

export type ReadingBookings = {
  readonly columns: BookingColumns;
  readonly dateOrder: DateOrder | null;
  readonly answers: Pick<BookingAnswers, "act" | "where">;
  readonly today: Day;
  /** The minute of the clinic's day. */
  readonly at: Minute;
};

/** "11/11/2026 09:30" in one cell; what stands in the column of times counts before it. */
const WITH_TIME = /^(.*?\d.*?)[ T,]+(\d{1,2}[:.]\d{2}(?: ?[ap]m)?)(?::\d{2})?$/i;

class BookingReader {
  readonly reasons: BookingReason[] = [];

  keep<T>(field: BookingField, read: Parsed<T>): T | null {
    if (read.ok) return read.value;
    this.reasons.push({ label: bookingLabel(field), refusal: read.refusal });
    return null;
  }
}

type Cells = Partial<Record<BookingField, string>>;

function cellsOf(reader: BookingReader, { cells }: SheetLine, columns: BookingColumns): Cells {
  const found: Cells = {};
  for (const [index, field] of columns.entries()) {
    if (field === LEFT_OUT) continue;
    const text = reader.keep(field, plainCell(cells[index] ?? "")) ?? "";
    found[field] = saysUnknown(text) ? "" : text;
  }
  return found;
}

const orNull = (text: string | undefined): string | null => (text === undefined || text === "" ? null : text);

const nameOf = ({ familyName = "", wholeName = "" }: Cells): ReadBooking["name"] => {
  const text = orNull(familyName) ?? orNull(wholeName);
  return text === null ? null : { text, whole: familyName === "" };
};

type Dated = { readonly reader: BookingReader; readonly reading: ReadingBookings };

function birthOf({ birthOn = "" }: Cells, { reader, reading }: Dated): Day | null {
  if (birthOn === "") return null;
  const { dateOrder: order, today } = reading;
  const thisYear = Number(today.slice(0, 4));
  const text = reader.keep("birthOn", dateCell(birthOn, { field: "birthOn", order, thisYear }));
  return text === null ? null : reader.keep("birthOn", readDay(text, { today, direction: "past" }));
}

function dayOf(text: string, { reader, reading }: Dated): Day | null {
  const { dateOrder: order, today } = reading;
  const thisYear = Number(today.slice(0, 4));
  const cell = reader.keep("on", dateCell(text, { field: "on", order, thisYear }));
  if (cell === null) return null;
  return reader.keep("on", comingDayField({ label: "", what: "the day of the booking" }, reading).read(cell));
}

const isPast = (on: Day, from: Minute | null, { today, at }: ReadingBookings): boolean =>
  on < today || (on === today && from !== null && from < at);

/** One row of a hospital's list, or all that is to be mended in it. A day that is past is refused: it is nothing that is booked. */
export function readBooking(
  line: SheetLine,
  reading: ReadingBookings,
):
  | { readonly ok: true; readonly booking: ReadBooking }
  | { readonly ok: false; readonly reasons: readonly BookingReason[] } {
  const reader = new BookingReader();
  const cells = cellsOf(reader, line, reading.columns);
  const [, day = cells.on ?? "", clock = ""] = WITH_TIME.exec(cells.on ?? "") ?? [];
  const dated = { reader, reading };
  const on = dayOf(day, dated);
  const from = reader.keep("at", minuteField({ label: "" }).read(orNull(cells.at) ?? clock));
  const where = reader.keep("where", lineField({ label: "" }).read(cells.where ?? ""));
  const birthOn = birthOf(cells, dated);
  if (on !== null && isPast(on, from, reading))
    reader.reasons.push({
      label: bookingLabel("on"),
      refusal: { code: "slot-past", args: { slot: printDay(on) } },
    });
  if (on === null || reader.reasons.length > 0) return { ok: false, reasons: reader.reasons };
  return {
    ok: true,
    booking: {
      row: line.row,
      number: orNull(cells.number),
      name: nameOf(cells),
      birthOn,
      on,
      from,
      where: where ?? reading.answers.where,
      what: whatSaid(cells.what ?? ""),
    },
  };
}
