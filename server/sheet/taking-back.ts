import { clinicOf } from "#db/queries/clinic.ts";
import { sheetBatchOf } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { restsOnAct } from "#server/record/rests-on-act.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Records named of those that keep a list from being taken back. */
const NAMED = 10;

/** A list that was brought in, before it is taken back: what it brought, and the records whose later work rests on it. */
export function takingBack(db: Database, actId: string) {
  const batch = sheetBatchOf(db, actId);
  if (batch === undefined) throw new DomainError({ code: "nothing-to-undo" });
  const resting = batch.standing === 0 ? [] : restsOnAct(db, actId);
  return {
    zone: clinicOf(db).zone,
    batch,
    resting: { count: resting.length, named: resting.slice(0, NAMED) },
  };
}
