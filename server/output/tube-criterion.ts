import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { cavityOf } from "#shared/output/criterion/cavity.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import { fold } from "#shared/tube/fold.ts";

/** The clinic's criterion for one tube, from its patient's record and the readings of every tube of its cavity. */
export function tubeCriterion(db: Database, tubeId: string): Criterion {
  const patientId = tubeById(db, tubeId)?.patientId;
  if (patientId === undefined) throw new DomainError({ code: "tube-unknown" });
  const { events, books } = loadRecord(db, patientId);
  const { tubes, clinical, conditions } = fold(events);
  const tube = tubes.find(({ id }) => id === tubeId);
  if (tube === undefined) throw new DomainError({ code: "tube-unknown" });
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
