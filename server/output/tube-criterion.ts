import { clinicOf } from "#db/queries/clinic.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { cavityOf } from "#shared/output/criterion/cavity.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import { ageOf } from "#shared/step/open-steps.ts";

/** The clinic's criterion for one tube, from its patient's record and the readings of every tube of its cavity. */
export function tubeCriterion(db: Database, tubeId: string): Criterion {
  const { record, state, tube } = loadTube(db, tubeId);
  const { tubes, clinical, conditions } = state;
  const { books } = record;
  return criterionOf({
    tube,
    tubes,
    readings: cavityOf(tube, tubes).draining.flatMap(({ id }) => standingOf(readingsOfTube(db, id))),
    clinical,
    conditions,
    age: ageOf(tube, books.bornOn),
    protocol: books.protocol(tube.pins.protocol),
    zone: clinicOf(db).zone,
    now: now(db),
  });
}
