import { tubeById } from "#db/queries/projections.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import type { Evidence } from "#shared/review/evidence.ts";
import type { TubeState } from "#shared/tube/state.ts";

const MOST_REASONS = 23;

/** The verdict and the codes of its reasons, as they stood. */
const saidOf = ({ kind, because }: Criterion): string[] => [
  kind,
  ...because.slice(0, MOST_REASONS).map(({ code }) => code),
];

/** What stands of a tube at this moment and is kept with the decision that rests on it. Throws `tube-unknown`. */
export function evidenceNow(db: Database, tubeId: string): Evidence {
  const row = tubeById(db, tubeId);
  if (row === undefined) throw new DomainError({ code: "tube-unknown" });
  const tube = row.state as TubeState;
  return {
    asOf: now(db),
    readings: standingOf(readingsOfTube(db, tubeId)).map(({ id }) => id),
    said: saidOf(tubeCriterion(db, tubeId)),
    protocol: tube.pins.protocol,
  };
}
