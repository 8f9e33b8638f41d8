import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { measuredTube } from "#server/output/measured-tube.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import { chartFacts } from "#shared/output/chart/chart-facts.ts";
import { flushIsOrdered } from "#shared/output/output-of-tube.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";

/**
 * What a tube's output page shows: net days with what cannot be told, what stands behind them, the clinic's criterion, and every reading with who wrote it.
 * The trend comes without its dates "if unchanged", which not everybody is shown.
 */
export function viewOutput(db: Database, tubeId: string) {
  const measured = measuredTube(db, tubeId);
  const { tube, log, readings, zone, protocol, output, trend } = measured;
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const written = new Map(
    log.map(({ id, recordedAt, recordedBy }) => [id, { recordedAt, by: names.get(recordedBy) ?? "" }]),
  );
  return {
    zone,
    hasOutput: kindOf(tube.kind).outside,
    flushOrdered: flushIsOrdered(tube),
    /** What a new reading is held against. */
    rows: { output: protocol.output, plausible: protocol.outputRows?.plausibility ?? null },
    output,
    criterion: tubeCriterion(db, tubeId),
    chart: chartFacts(tube, measured),
    trend: trend.kind === "told" ? withoutSpan(trend) : trend,
    readings: readings
      .map((reading) => ({ reading, ...(written.get(reading.id) ?? { recordedAt: reading.to, by: "" }) }))
      .toSorted((a, b) => b.reading.to - a.reading.to),
  };
}

function withoutSpan<T extends { readonly ifUnchanged: unknown }>({ ifUnchanged: _, ...rest }: T) {
  return rest;
}

export type OutputView = ReturnType<typeof viewOutput>;
