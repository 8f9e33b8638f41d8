import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { protocolOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { flushIsOrdered, outputOfTube } from "#shared/output/output-of-tube.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What a tube's output page shows: net days with what cannot be told, and every reading with who wrote it. */
export function viewOutput(db: Database, tubeId: string) {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  const { zone } = clinicOf(db);
  const rows = readingsOfTube(db, tubeId);
  const readings = standingOf(rows);
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const written = new Map(
    rows.map(({ id, recordedAt, recordedBy }) => [id, { recordedAt, by: names.get(recordedBy) ?? "" }]),
  );
  return {
    zone,
    hasOutput: kindOf(tube.kind).outside,
    flushOrdered: flushIsOrdered(tube),
    output: outputOfTube(tube, {
      readings,
      zone,
      row: protocolOf(db, tube.pins.protocol).output,
      now: now(db),
    }),
    readings: readings
      .map((reading) => ({ reading, ...(written.get(reading.id) ?? { recordedAt: reading.to, by: "" }) }))
      .toSorted((a, b) => b.reading.to - a.reading.to),
  };
}

export type OutputView = ReturnType<typeof viewOutput>;
