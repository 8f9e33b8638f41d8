import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { othersOnIt } from "#server/review/others-on-it.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { type EvidenceChange, evidenceChanges } from "#shared/review/evidence.ts";

/**
 * The last decision of a tube's review, how the readings that it rested on differ now, and who else is at it beside the one who looks. Throws
 * `tube-unknown`.
 */
export function viewReview(db: Database, tubeId: string, staffId: string) {
  const loaded = loadTube(db, tubeId);
  const { lastReview } = loaded.tube;
  const evidence = lastReview?.evidence ?? null;
  const changes: readonly EvidenceChange[] =
    evidence === null ? [] : evidenceChanges(evidence, entriesOf(readingsOfTube(db, tubeId)));
  return { lastReview, changes, others: othersOnIt(db, loaded, staffId) };
}
