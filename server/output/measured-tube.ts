import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { protocolOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube with its log of readings, those that stand, its net days, and the rows that it is read by. */
export function measuredTube(db: Database, tubeId: string) {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  const { zone } = clinicOf(db);
  const log = readingsOfTube(db, tubeId);
  const measured = {
    readings: standingOf(log),
    zone,
    row: protocolOf(db, tube.pins.protocol).output,
    now: now(db),
  };
  return { tube, log, ...measured, output: outputOfTube(tube, measured) };
}
