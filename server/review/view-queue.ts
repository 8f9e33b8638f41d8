import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { stepLinesById } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import { recentOutput } from "#server/output/recent-output.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import { queueOrder } from "#server/review/queue-order.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Lines of one page of the queue. */
const PAGE = 100;

function chartOf(db: Database, { tube }: ListLine): ChartFacts | null {
  const row = tube === null ? undefined : tubeById(db, tube.id);
  return row === undefined ? null : recentOutput(db, row.state as TubeState);
}

/** Of an alarm no criterion is asked. */
const criterionBeside = (db: Database, { step, tube }: ListLine): Criterion | null =>
  step.kind === "alarm" || tube === null ? null : tubeCriterion(db, tube.id);

/**
 * One page of what waits for a physician's decision, counted from 1, with the criterion and the last days of output beside each tube that
 * has any. A page after the last holds nothing.
 */
export function viewQueue(db: Database, page = 1) {
  const day = today(db);
  const order = queueOrder(db);
  const waiting = order.slice((page - 1) * PAGE, page * PAGE);
  const rows = stepLinesById(
    db,
    waiting.map(({ stepId }) => stepId),
  );
  const lineById = new Map(rows.map((row) => [row.id, lineOf(row, day)]));
  const lines = waiting.flatMap(({ stepId, part, since }) => {
    const line = lineById.get(stepId);
    return line === undefined
      ? []
      : [{ ...line, part, since, criterion: criterionBeside(db, line), chart: chartOf(db, line) }];
  });
  return { today: day, zone: clinicOf(db).zone, lines, hasNext: order.length > page * PAGE };
}
