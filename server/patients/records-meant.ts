import { recordsAlike, recordsWithNumber } from "#db/queries/other-records.ts";
import { identifiersOf, patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { numbersNamed } from "#shared/record/patient/numbers-named.ts";
import { fold } from "#shared/tube/fold.ts";

const SHOWN = 5;
const FEW_ENOUGH = 20;

type Row = ReturnType<typeof recordsAlike>[number];

const sameWords = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** Same names and same birth date before those that share only one of the two. */
function alikest(db: Database, patientId: string): readonly Row[] {
  const self = patientById(db, patientId);
  const rows = recordsAlike(db, patientId, FEW_ENOUGH);
  const both = rows.filter(
    ({ familyName, givenName, birthOn }) =>
      self !== undefined &&
      birthOn !== null &&
      birthOn === self.birthOn &&
      sameWords(familyName, self.familyName) &&
      sameWords(givenName, self.givenName),
  );
  return both.length > 0 ? both : rows;
}

/**
 * Which records "two records of one patient" may speak of, while that is open: those whose number the remark names, then those of the
 * same name and birth date, else of one of them. Nothing where it is not asked.
 */
export function recordsMeant(db: Database, patientId: string) {
  const remarks = fold(loadRecord(db, patientId).events).reconciles.filter(
    ({ about }) => about === "two records of one patient",
  );
  if (remarks.length === 0) return [];
  const named = remarks
    .flatMap(({ says }) => numbersNamed(says))
    .flatMap((number) => recordsWithNumber(db, patientId, number));
  const byId = new Map([...named, ...alikest(db, patientId)].map((row) => [row.id, row]));
  return [...byId.values()]
    .slice(0, SHOWN)
    .map((row) => ({ ...row, identifiers: identifiersOf(db, row.id) }));
}
