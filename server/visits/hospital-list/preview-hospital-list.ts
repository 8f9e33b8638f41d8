import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { type HospitalList, readHospitalList } from "#server/visits/hospital-list/read-hospital-list.ts";
import { type BookingAnswers, bookingFields, bookingLabel } from "#shared/visit/hospital-list/columns.ts";
import type { BookingStanding } from "#shared/visit/hospital-list/stand-bookings.ts";
import type { HerePatient } from "#shared/visit/hospital-list/whom.ts";
import { bookingSentence } from "#shared/words/bookings.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const shownPatient = ({ id, familyName, givenName, birthOn, number }: HerePatient) => ({
  id,
  familyName,
  givenName,
  birthOn,
  number,
});

/** One row as a person reads it before it is brought in. */
function previewRow(standing: BookingStanding) {
  const { row } = standing;
  switch (standing.stands) {
    case "books":
    case "moves":
    case "known": {
      const patient = shownPatient(standing.booking.patient);
      return { row, stands: standing.stands, patient, sentence: bookingSentence(standing) };
    }
    case "asks":
      return {
        row,
        stands: standing.stands,
        cells: standing.cells,
        patient: shownPatient(standing.patient),
        options: standing.options,
      };
    case "said above":
      return { row, stands: standing.stands, above: standing.above };
    case "set aside":
      return {
        row,
        stands: standing.stands,
        cells: standing.cells,
        reasons: standing.reasons.map(({ label, refusal }) => ({
          label,
          sentence: refusalSentence(refusal),
        })),
      };
  }
}

/** A hospital's list as it would stand, row by row, with what is still to be said of it. Throws what `readHospitalList` throws. */
export function previewHospitalList(db: Database, list: HospitalList) {
  const { sheet, columns, asksOrder, refusals, rows } = readHospitalList(db, now(db), list);
  const answers: BookingAnswers = { ...list.answers, columns: [...columns] };
  return {
    headings: sheet.headings,
    count: sheet.rows.length,
    answers,
    asksOrder,
    fields: bookingFields.map((field) => ({ value: field, label: bookingLabel(field) })),
    problems: refusals.map((refusal) => ({
      field: refusal.field ?? "columns",
      sentence: refusalSentence(refusal),
    })),
    rows: rows.map(previewRow),
  };
}

export type HospitalPreview = ReturnType<typeof previewHospitalList>;
