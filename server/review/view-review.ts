import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { recentOutput } from "#server/output/recent-output.ts";
import { entriesOf } from "#server/output/standing-readings.ts";
import { othersOnIt } from "#server/review/others-on-it.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import { type Beside, bileBeside } from "#shared/output/together/bile-beside.ts";
import { type EvidenceChange, evidenceChanges } from "#shared/review/evidence.ts";

/** A tube that is read beside the one under review, with its last days. */
export type BesideInReview = Beside & { readonly chart: ChartFacts | null };

/**
 * The last decision of a tube's review, how the readings that it rested on differ now, who else is at it beside the one who looks, and what is
 * read beside it. Throws `tube-unknown`.
 */
export function viewReview(db: Database, tubeId: string, staffId: string) {
  const loaded = loadTube(db, tubeId);
  const { tube, state } = loaded;
  const { lastReview } = tube;
  const evidence = lastReview?.evidence ?? null;
  const changes: readonly EvidenceChange[] =
    evidence === null ? [] : evidenceChanges(evidence, entriesOf(readingsOfTube(db, tubeId)));
  const beside: readonly BesideInReview[] = bileBeside(tube, state.tubes).map((one) => ({
    ...one,
    chart: recentOutput(db, one.tube),
  }));
  return { asOf: now(db), lastReview, changes, others: othersOnIt(db, loaded, staffId), beside };
}
