import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { type EvidenceChange, evidenceChanges } from "#shared/review/evidence.ts";
import { fold } from "#shared/tube/fold.ts";

/** The last decision of a tube's review, and how the readings that it rested on differ now. Throws `tube-unknown`. */
export function viewReview(db: Database, tubeId: string) {
  const patientId = tubeById(db, tubeId)?.patientId;
  if (patientId === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = fold(loadRecord(db, patientId).events).tubes.find(({ id }) => id === tubeId);
  const lastReview = tube?.lastReview ?? null;
  const evidence = lastReview?.evidence ?? null;
  const changes: readonly EvidenceChange[] =
    evidence === null ? [] : evidenceChanges(evidence, entriesOf(readingsOfTube(db, tubeId)));
  return { lastReview, changes };
}

export type ReviewView = ReturnType<typeof viewReview>;
