import type { Database } from "#db/sqlite.ts";
import { measuredTube } from "#server/output/measured-tube.ts";
import type { IfUnchanged } from "#shared/output/trend/if-unchanged.ts";
import { trendOfTube } from "#shared/output/trend/trend-of-tube.ts";

/** Between which days the net of a collection would go under the row, for the physician's screen; null where no trend is told. */
export function viewIfUnchanged(db: Database, tubeId: string): IfUnchanged | null {
  const { tube, output, row } = measuredTube(db, tubeId);
  const trend = trendOfTube(output.days, { role: tube.role, mode: tube.mode, row });
  return trend.kind === "told" ? trend.ifUnchanged : null;
}
