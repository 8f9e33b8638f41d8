import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { type EvidenceChange, evidenceChanges } from "#shared/review/evidence.ts";

/** The last decision of a tube's review, and how the readings that it rested on differ now. Throws `tube-unknown`. */
export function viewReview(db: Database, tubeId: string) {
  const { lastReview } = loadTube(db, tubeId).tube;
  const evidence = lastReview?.evidence ?? null;
  const changes: readonly EvidenceChange[] =
    evidence === null ? [] : evidenceChanges(evidence, entriesOf(readingsOfTube(db, tubeId)));
  return { lastReview, changes };
}
