import { actsBefore } from "#db/queries/acts.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { readsBefore } from "#db/queries/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { instant } from "#shared/day/instant.ts";

const SHOWN = 200;

/** The newest looks and acts, for the lead: who saw whom, who did what, when. */
export function whoSawWhat(db: Database) {
  const before = instant(now(db) + 1);
  return {
    zone: clinicOf(db).zone,
    reads: readsBefore(db, before, SHOWN),
    acts: actsBefore(db, before, SHOWN),
  };
}
