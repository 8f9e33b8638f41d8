import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { recentOutput } from "#server/output/recent-output.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import { queueOrder, type Waiting } from "#server/review/queue-order.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Lines of one page of the queue. */
const PAGE = 100;

function chartOf(db: Database, { tube }: Waiting): ChartFacts | null {
  const row = tube === null ? undefined : tubeById(db, tube.id);
  return row === undefined ? null : recentOutput(db, row.state as TubeState);
}

/** Of an alarm no criterion is asked. */
const criterionBeside = (db: Database, { step, tube }: Waiting): Criterion | null =>
  step.kind === "alarm" || tube === null ? null : tubeCriterion(db, tube.id);

/**
 * One page of what waits for a physician's decision, counted from 1, with the criterion and the last days of output beside each tube that
 * has any. A page after the last holds nothing.
 */
export function viewQueue(db: Database, page = 1) {
  const waiting = queueOrder(db);
  const lines = waiting.slice((page - 1) * PAGE, page * PAGE).map((line) => ({
    ...line,
    criterion: criterionBeside(db, line),
    chart: chartOf(db, line),
  }));
  return { today: today(db), zone: clinicOf(db).zone, lines, hasNext: waiting.length > page * PAGE };
}
