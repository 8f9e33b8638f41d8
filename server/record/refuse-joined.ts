import { identifiersOf, type PatientRow } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Nothing more is recorded in a record that goes on in another (`record-joined`): says by its number in which. */
export function refuseJoined(db: Database, { joinedInto }: PatientRow): void {
  if (joinedInto === null) return;
  const [number] = identifiersOf(db, joinedInto);
  const args = { number: number === undefined ? "" : `${number.issuer} ${number.value}` };
  throw new DomainError({ code: "record-joined", args });
}
