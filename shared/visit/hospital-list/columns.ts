import * as z from "zod";
import type { Refusal } from "#shared/errors/refusal.ts";
import { dateOrders, LEFT_OUT } from "#shared/sheet/answers.ts";
import { type ColumnNames, calledFields } from "#shared/sheet/called-fields.ts";
import { MOST_COLUMNS } from "#shared/sheet/sheet.ts";
import { LINE_LIMIT } from "#shared/tube/entry-limits.ts";
import { type VisitAct, visitActs } from "#shared/visit/visit-acts.ts";

/**
 * What a column of a hospital's list of bookings can say: the words that it is shown by, and headings that hospitals give it (practice,
 * no source).
 */
const fields = {
  number: {
    label: "Record number",
    also: ["mrn", "number", "hospital number", "hospital no", "patient id", "patient no", "unit number"],
  },
  familyName: { label: "Family name", also: ["surname", "last name", "family"] },
  wholeName: { label: "Whole name", also: ["name", "patient", "patient name", "full name", "pt"] },
  birthOn: { label: "Born on", also: ["born", "birth date", "date of birth", "dob", "birthdate"] },
  on: {
    label: "Date",
    also: ["day", "appointment date", "appointment", "booked for", "scheduled", "date of visit", "slot"],
  },
  at: { label: "Time", also: ["start", "start time", "appointment time", "from"] },
  where: { label: "Where", also: ["location", "site", "room", "department", "place", "unit", "clinic"] },
  what: { label: "What", also: ["procedure", "exam", "examination", "appointment type", "tube", "reason"] },
} as const satisfies Record<string, ColumnNames>;

export type BookingField = keyof typeof fields;
export const bookingFields = Object.keys(fields) as BookingField[];

export const bookingLabel = (field: BookingField): string => fields[field].label;

const { fieldCalled, isHeading } = calledFields<BookingField>(fields);
export const isBookingHeading = isHeading;

/** One tube of a patient, or several by their numbers, and what is done: "1:exchange", "1+2:check". */
const CHOICE = /^(\d{1,3}(?:\+\d{1,3})*):(exchange|check|removal)$/;

/** What was answered about a list, once for all its rows and row by row. Null: not answered. */
export const bookingAnswersSchema = z.strictObject({
  /** What each column says, in the order of the headings; null as the headings say. */
  columns: z
    .array(z.enum([LEFT_OUT, ...bookingFields]))
    .max(MOST_COLUMNS)
    .nullable(),
  dateOrder: z.enum(dateOrders).nullable(),
  /** What is done, where a row does not say. */
  act: z.enum(visitActs).nullable(),
  /** Where it is, where a row does not say. */
  where: z.string().trim().min(1).max(LINE_LIMIT),
  /** Rows in which a tube was chosen, with the choice. */
  choices: z.record(z.string().regex(/^\d{1,6}$/), z.string().regex(CHOICE)),
});
export type BookingAnswers = Readonly<z.infer<typeof bookingAnswersSchema>>;
export type BookingColumns = NonNullable<BookingAnswers["columns"]>;

/** Where a booking is that does not say so. */
export const THE_HOSPITAL = "the hospital";

export const noAnswers: BookingAnswers = {
  columns: null,
  dateOrder: null,
  act: null,
  where: THE_HOSPITAL,
  choices: {},
};

export type Chosen = { readonly numbers: readonly number[]; readonly act: VisitAct };

/** A choice by its word; null where the row has none. */
export function chosenIn({ choices }: Pick<BookingAnswers, "choices">, row: number): Chosen | null {
  const [, numbers, act] = CHOICE.exec(choices[row] ?? "") ?? [];
  const known = visitActs.find((one) => one === act);
  return numbers === undefined || known === undefined
    ? null
    : { numbers: numbers.split("+").map(Number), act: known };
}

export const choiceWord = ({ numbers, act }: Chosen): string => `${numbers.join("+")}:${act}`;

/** What the columns say: as answered, else by their headings; a field is suggested once. */
export function columnsOf(headings: readonly string[], answered: BookingAnswers["columns"]): BookingColumns {
  if (answered !== null) return headings.map((_, at) => answered[at] ?? LEFT_OUT);
  const given = new Set<string>();
  return headings.map((title) => {
    const field = fieldCalled(title) ?? LEFT_OUT;
    if (field === LEFT_OUT || given.has(field)) return LEFT_OUT;
    given.add(field);
    return field;
  });
}

/** What has to be mended in the matching of columns before any row can be read. */
export function columnRefusals(columns: BookingColumns): readonly Refusal[] {
  const has = (field: BookingField): boolean => columns.includes(field);
  const twice = bookingFields.filter((field) => columns.filter((column) => column === field).length > 1);
  const refusals: Refusal[] = twice.map((field) => ({
    code: "column-twice",
    field: "columns",
    args: { field: bookingLabel(field) },
  }));
  const missing = (what: string): Refusal => ({ code: "column-missing", field: "columns", args: { what } });
  const named = has("familyName") || has("wholeName");
  if (!has("number") && !(named && has("birthOn")))
    refusals.push(missing("the record number, or the name and the birth date"));
  if (!has("on")) refusals.push(missing("the day of the booking"));
  return refusals;
}
