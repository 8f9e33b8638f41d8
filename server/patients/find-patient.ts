import { type FoundRow, findPatients, identifiersOf, patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import type { Day } from "#shared/day/day.ts";
import { numberSought, readSought } from "#shared/record/finder.ts";

/** As many as a search answers. */
export const MOST_FOUND = 20;

export type Found = {
  readonly id: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly number: string | null;
  /** The record number typed is this patient's, whole: meant before everyone of whom it is a part. */
  readonly isNumbered: boolean;
  /** The other record of this patient under which the search found them, since joined with this one. */
  readonly joined: {
    readonly familyName: string;
    readonly givenName: string;
    readonly number: string | null;
  } | null;
};

type Named = Omit<Found, "isNumbered" | "joined">;

/** The record with which another was joined, at the end of all joins; null where there is none any more. */
function recordAt(db: Database, id: string): Named | null {
  const row = patientById(db, id);
  if (row === undefined || row.withdrawnAt !== null) return null;
  if (row.joinedInto !== null) return recordAt(db, row.joinedInto);
  const { familyName, givenName, birthOn } = row;
  return { id, familyName, givenName, birthOn, number: identifiersOf(db, id)[0]?.value ?? null };
}

/** Who has the number that was typed: written with the same zeros in front, else with others or none. */
function numbered(db: Database, rows: readonly FoundRow[], typed: string): readonly FoundRow[] {
  const whole = rows.filter(({ wholeWords }) => wholeWords);
  const asTyped = whole.filter(({ id }) => identifiersOf(db, id).some(({ value }) => value === typed.trim()));
  return asTyped.length > 0 ? asTyped : whole;
}

function foundFrom(db: Database, row: FoundRow, isNumbered: boolean): Found | null {
  const { joinedInto, wholeWords: _wholeWords, ...named } = row;
  if (joinedInto === null) return { ...named, isNumbered, joined: null };
  const record = recordAt(db, joinedInto);
  return record && { ...record, isNumbered, joined: named };
}

/**
 * Patients by parts of a name, record number, telephone or birth date, in any way in which these are typed. Nothing typed finds
 * nobody. A record that was joined with another leads to that one; each patient is found once. `more`: beside these, others are meant.
 */
export function findPatient(
  db: Database,
  typed: string,
): { readonly patients: readonly Found[]; readonly more: boolean } {
  const sought = readSought(typed, today(db));
  const rows = findPatients(db, sought, MOST_FOUND + 1);
  const byNumber = numberSought(sought) === null ? [] : numbered(db, rows, typed);
  const found = new Map<string, Found>();
  for (const row of rows.slice(0, MOST_FOUND)) {
    const patient = foundFrom(db, row, byNumber.includes(row));
    if (patient === null) continue;
    const known = found.get(patient.id);
    // A record of its own says more than one that was joined with it.
    if (known === undefined || known.joined !== null) found.set(patient.id, patient);
  }
  return { patients: [...found.values()], more: rows.length > MOST_FOUND };
}
