import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { logOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { protocolOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { standingReadings } from "#shared/output/reading-log.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube with its log of readings and those that stand, and the rows that it is pinned to. Computes nothing from them. */
export function loggedTube(db: Database, tubeId: string) {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  const log = logOfTube(db, tubeId);
  const entries = entriesOf(log);
  const protocol = protocolOf(db, tube.pins.protocol);
  const readings = standingReadings(entries);
  return { tube, log, entries, readings, zone: clinicOf(db).zone, now: now(db), protocol };
}
