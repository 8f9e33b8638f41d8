import type { Database } from "#db/sqlite.ts";
import { loggedTube } from "#server/output/logged-tube.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import type { Evidence } from "#shared/review/evidence.ts";

const MOST_REASONS = 23;

/** The verdict and the codes of its reasons, as they stood. */
const saidOf = ({ kind, because }: Criterion): string[] => [
  kind,
  ...because.slice(0, MOST_REASONS).map(({ code }) => code),
];

/** What stands of a tube at this moment and is kept with the decision that rests on it. Throws `tube-unknown`. */
export function evidenceNow(db: Database, tubeId: string): Evidence {
  const { readings, protocol, now: asOf } = loggedTube(db, tubeId);
  return {
    asOf,
    readings: readings.map(({ id }) => id),
    said: saidOf(tubeCriterion(db, tubeId)),
    protocol: protocol.version,
  };
}
