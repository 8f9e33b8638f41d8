import { clinicOf } from "#db/queries/clinic.ts";
import { tubeById } from "#db/queries/projections.ts";
import { reviewSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import { recentOutput } from "#server/output/recent-output.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import type { Day } from "#shared/day/day.ts";
import type { ChartFacts } from "#shared/output/chart/chart-facts.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { isStandIn, plateauIn, type QueuePart, queuePartOf, queueParts } from "#shared/review/queue-part.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** A tube that waits for a physician, with the clinic's criterion where one is asked of it. */
export type QueueLine = ListLine & { readonly criterion: Criterion | null; readonly part: QueuePart };

/** Alarms and reviews; of a tube without a review the first that stands in for it. */
function waitingSteps(db: Database, day: Day): readonly ListLine[] {
  const lines = reviewSteps(db).map((row) => lineOf(row, day));
  const spokenFor = new Set(lines.flatMap(({ step }) => (step.kind === "review" ? [step.tubeId] : [])));
  return lines.filter(({ step: { kind, tubeId } }) => {
    if (!isStandIn(kind)) return true;
    const first = !spokenFor.has(tubeId);
    spokenFor.add(tubeId);
    return first;
  });
}

function queueLine(db: Database, line: ListLine, day: Day): readonly QueueLine[] {
  const { step, tube } = line;
  const criterion = step.kind === "alarm" || tube === null ? null : tubeCriterion(db, tube.id);
  // Only a plateau asks what the last review saw: its tube is read for that alone.
  const asked = plateauIn(criterion) !== undefined && tube !== null ? tubeById(db, tube.id) : undefined;
  const lastReview = (asked?.state as TubeState | undefined)?.lastReview ?? null;
  const part = queuePartOf({ step, criterion, lastReview }, day);
  return part === null ? [] : [{ ...line, criterion, part }];
}

/** Since when a line waits: a plateau from the day with which it came up, everything else from its due day. */
const waitsSince = ({ part, criterion, step }: QueueLine): Day =>
  part === "plateau" ? (plateauIn(criterion)?.since ?? step.dueOn) : step.dueOn;

/** What waits for a physician's decision, part by part in the order in which they are read, each by who has waited longest. */
function waiting(db: Database, day: Day): readonly QueueLine[] {
  const lines = waitingSteps(db, day).flatMap((line) => queueLine(db, line, day));
  return queueParts.flatMap((part) =>
    lines
      .filter((line) => line.part === part)
      .toSorted((a, b) => (waitsSince(a) < waitsSince(b) ? -1 : waitsSince(a) > waitsSince(b) ? 1 : 0)),
  );
}

function chartOf(db: Database, { tube }: QueueLine): ChartFacts | null {
  const row = tube === null ? undefined : tubeById(db, tube.id);
  return row === undefined ? null : recentOutput(db, row.state as TubeState);
}

/** The queue with the last days of output beside each tube that has any. */
export function viewQueue(db: Database) {
  const day = today(db);
  const lines = waiting(db, day).map((line) => ({ ...line, chart: chartOf(db, line) }));
  return { today: day, zone: clinicOf(db).zone, lines };
}

/** The tubes of the queue in its order, each once. */
export const queuedTubes = (db: Database): readonly string[] => [
  ...new Set(waiting(db, today(db)).flatMap(({ tube }) => (tube === null ? [] : [tube.id]))),
];
