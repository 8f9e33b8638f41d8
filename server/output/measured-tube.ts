import type { Database } from "#db/sqlite.ts";
import { loggedTube } from "#server/output/logged-tube.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import { trendOfTube } from "#shared/output/trend/trend-of-tube.ts";

/** A tube with its log of readings, its net days and what stands behind them, by the rows it is pinned to. */
export function measuredTube(db: Database, tubeId: string) {
  const logged = loggedTube(db, tubeId);
  const { tube, protocol } = logged;
  const output = outputOfTube(tube, { ...logged, row: protocol.output });
  const { role, mode, kind } = tube;
  const trend = trendOfTube(output.days, { role, mode, row: lowRowOf(kind, protocol) });
  return { ...logged, output, trend };
}
