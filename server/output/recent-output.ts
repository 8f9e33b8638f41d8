import { clinicOf } from "#db/queries/clinic.ts";
import { recentLogOfTube } from "#db/queries/recent-readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { protocolOf } from "#server/record/books.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { recentChart, recentSpan } from "#shared/output/chart/recent-chart.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/**
 * The last days of a tube's output as a list draws them, however long its log is. Null of a tube that lies wholly inside, and of one that
 * output does not measure until somebody logs some.
 */
export function recentOutput(db: Database, tube: TubeState): ChartFacts | null {
  const { outside, output } = kindOf(tube.kind);
  if (!outside) return null;
  const asked = { zone: clinicOf(db).zone, now: now(db) };
  const rows = recentLogOfTube(db, { tubeId: tube.id, since: recentSpan(tube, asked).from });
  const protocol = protocolOf(db, tube.pins.protocol);
  const chart = recentChart(tube, { ...asked, readings: standingOf(rows), protocol });
  return chart.span === null && output === null ? null : chart;
}
