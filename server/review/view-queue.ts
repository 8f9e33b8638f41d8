import { clinicOf } from "#db/queries/clinic.ts";
import { reviewSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import { tubeCriterion } from "#server/output/tube-criterion.ts";
import type { Day } from "#shared/day/day.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import { type QueuePart, queuePartOf, queueParts } from "#shared/review/queue-part.ts";

/** A tube that waits for a physician, with the clinic's criterion where one is asked of it. */
export type QueueLine = ListLine & { readonly criterion: Criterion | null; readonly part: QueuePart };

function queueLine(db: Database, line: ListLine, day: Day): readonly QueueLine[] {
  const { step, tube } = line;
  const criterion = step.kind === "alarm" || tube === null ? null : tubeCriterion(db, tube.id);
  const part = queuePartOf(step, criterion?.kind ?? null, day);
  return part === null ? [] : [{ ...line, criterion, part }];
}

/** What waits for a physician's decision, part by part in the order in which they are read, each by who has waited longest. */
export function viewQueue(db: Database) {
  const day = today(db);
  const waiting = reviewSteps(db).flatMap((row) => queueLine(db, lineOf(row, day), day));
  const lines = queueParts.flatMap((part) => waiting.filter((line) => line.part === part));
  return { today: day, zone: clinicOf(db).zone, lines };
}
