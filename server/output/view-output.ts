import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { readingEntry } from "#server/output/stored-reading.ts";
import { protocolOf } from "#server/record/books.ts";
import { endOfDay, type Instant, type Zone } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { netDays } from "#shared/output/net-days.ts";
import { standingReadings } from "#shared/output/reading-log.ts";
import { instantOf, segmentCuts } from "#shared/output/segment-cuts.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A flush counts as ordered when the order says so; with no order recorded, when the kind's example has one. */
export const flushIsOrdered = (tube: TubeState): boolean =>
  tube.flushOrder.certainty === "unknown"
    ? kindOf(tube.kind).flush !== null
    : tube.flushOrder.value.toLowerCase() !== "none";

/** The instant of the placement, where its clock time is known: half a day more or less would change a first rate. */
function placedAt(tube: TubeState, zone: Zone): Instant | null {
  const opening = tube.story[0];
  return opening === undefined || opening.time === null ? null : instantOf(opening, zone);
}

/** What a tube's output page shows: net days with what cannot be told, and every reading with who wrote it. */
export function viewOutput(db: Database, tubeId: string) {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  const { zone } = clinicOf(db);
  const rows = readingsOfTube(db, tubeId).toSorted((a, b) => a.recordedAt - b.recordedAt);
  const readings = standingReadings(rows.map((stored, index) => readingEntry(stored, index + 1)));
  const ended = tube.ending?.when.latest ?? null;
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const written = new Map(
    rows.map(({ id, recordedAt, recordedBy }) => [id, { recordedAt, by: names.get(recordedBy) ?? "" }]),
  );
  return {
    zone,
    hasOutput: kindOf(tube.kind).outside,
    flushOrdered: flushIsOrdered(tube),
    output: netDays({
      readings,
      zone,
      flushOrdered: flushIsOrdered(tube),
      cuts: segmentCuts(tube.story, zone),
      placedAt: placedAt(tube, zone),
      outAt: ended === null ? null : endOfDay(ended, zone),
      row: protocolOf(db, tube.pins.protocol).output,
      now: now(db),
    }),
    readings: readings
      .map((reading) => ({ reading, ...(written.get(reading.id) ?? { recordedAt: reading.to, by: "" }) }))
      .toSorted((a, b) => b.reading.to - a.reading.to),
  };
}

export type OutputView = ReturnType<typeof viewOutput>;
