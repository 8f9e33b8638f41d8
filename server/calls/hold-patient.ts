import { dropHold, holdAfter, putHold } from "#db/queries/call-holds.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { clinicInstant, machineNow } from "#server/clock.ts";
import type { Doing } from "#server/record/record-event.ts";
import { clockText, type Instant, instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** As long as a session without use: whoever holds a patient longer has gone away from the call. */
const HOLD_MS = 30 * 60_000;

/** Holds taken after this moment stand; the machine's clock, since a moved demo ends no call. */
export const heldAfter = (at: Instant): Instant => instant(at - HOLD_MS);

export type Hold = { readonly staffId: string; readonly name: string; readonly sinceAt: Instant };

/** Who rings this patient now; null where nobody does, or nobody has for half an hour. */
export const holdOf = (db: Database, patientId: string): Hold | null =>
  holdAfter(db, { patientId, after: heldAfter(machineNow()) }) ?? null;

export type TakingHold = {
  readonly patientId: string;
  /** Somebody else holds it, and was seen to. */
  readonly over?: boolean | undefined;
};

/**
 * Takes a patient's call, so that nobody else rings them meanwhile; taken again it counts from now. Throws `patient-unknown`, and
 * `call-held` with who and since when, where somebody else holds it and it is not said to be taken over.
 */
export function takeHold({ db, staff }: Doing, { patientId, over }: TakingHold): Hold {
  return inTransaction(db, (tx) => {
    if (patientById(tx, patientId) === undefined) throw new DomainError({ code: "patient-unknown" });
    const held = holdOf(tx, patientId);
    if (held !== null && held.staffId !== staff.id && over !== true) {
      const since = clockText(clinicInstant(tx, held.sinceAt), clinicOf(tx).zone);
      throw new DomainError({ code: "call-held", args: { by: held.name, since } });
    }
    putHold(tx, { patientId, staffId: staff.id, sinceAt: machineNow() });
    const taken = holdOf(tx, patientId);
    if (taken === null) throw new Error("a hold that was just taken does not stand");
    return taken;
  });
}

/** Lets go of a patient's call; somebody else's hold stays. */
export function releaseHold(
  { db, staff }: Doing,
  { patientId }: Pick<TakingHold, "patientId">,
): { patientId: string } {
  inTransaction(db, (tx) => dropHold(tx, { patientId, staffId: staff.id }));
  return { patientId };
}
