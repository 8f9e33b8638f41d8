import type { Database } from "#db/sqlite.ts";
import { measuredTube } from "#server/output/measured-tube.ts";
import type { IfUnchanged } from "#shared/output/trend/if-unchanged.ts";

/** Between which days the net of a collection would go under the row, for the physician's screen; null where no trend is told. */
export function viewIfUnchanged(db: Database, tubeId: string): IfUnchanged | null {
  const { trend } = measuredTube(db, tubeId);
  return trend.kind === "told" ? trend.ifUnchanged : null;
}
