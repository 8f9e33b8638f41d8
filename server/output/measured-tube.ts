import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { protocolOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import { trendOfTube } from "#shared/output/trend/trend-of-tube.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube with its log of readings, those that stand, its net days and what stands behind them, by the rows it is pinned to. */
export function measuredTube(db: Database, tubeId: string) {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  const { zone } = clinicOf(db);
  const log = readingsOfTube(db, tubeId);
  const protocol = protocolOf(db, tube.pins.protocol);
  const measured = { readings: standingOf(log), zone, now: now(db) };
  const output = outputOfTube(tube, { ...measured, row: protocol.output });
  const { role, mode, kind } = tube;
  const trend = trendOfTube(output.days, { role, mode, row: lowRowOf(kind, protocol) });
  return { tube, log, ...measured, protocol, output, trend };
}
