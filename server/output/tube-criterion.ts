import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { criterionFacts } from "#server/output/criterion-facts.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";

/** The clinic's criterion for one tube as it stands now. */
export function tubeCriterion(db: Database, tubeId: string): Criterion {
  const { record, state, tube } = loadTube(db, tubeId);
  return criterionOf({ ...criterionFacts(tube, state, record.books), now: now(db) });
}
