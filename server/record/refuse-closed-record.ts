import { identifiersOf, type PatientRow } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/**
 * Nothing more is recorded in a record whose registration was undone (`record-withdrawn`), nor in one that goes on in another
 * (`record-joined`): says by its number in which.
 */
export function refuseClosedRecord(db: Database, { joinedInto, withdrawnAt }: PatientRow): void {
  if (withdrawnAt !== null) throw new DomainError({ code: "record-withdrawn" });
  if (joinedInto === null) return;
  const [number] = identifiersOf(db, joinedInto);
  const args = { number: number === undefined ? "" : `${number.issuer} ${number.value}` };
  throw new DomainError({ code: "record-joined", args });
}
