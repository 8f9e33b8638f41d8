import { reviewSteps, type StepLine } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { now, today } from "#server/clock.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import { criterionFacts } from "#server/output/criterion-facts.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { asksNothing, type OutputAsks, outputAsks } from "#shared/review/output-asks.ts";
import { isStandIn, type QueuePlace, queueParts, queuePlaceOf } from "#shared/review/queue-part.ts";
import { RULES_VERSION } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** A tube that waits for a physician, where and since when. */
export type Waiting = ListLine & QueuePlace;

/** What was computed with the last entry; of a row that stands from before this was kept it is computed now. */
function asksOf(db: Database, { tubeId, tubeRules, metUntil, plateauSince }: StepLine): OutputAsks {
  if (tubeId === null) return asksNothing;
  if (tubeRules === RULES_VERSION) return { metUntil, plateauSince };
  const { record, state, tube } = loadTube(db, tubeId);
  return outputAsks(criterionFacts(tube, state, record.books));
}

/** Alarms and reviews; of a tube without a review the first that stands in for it. */
function asking(rows: readonly StepLine[]): readonly StepLine[] {
  const spokenFor = new Set(rows.filter(({ kind }) => kind === "review").map(({ tubeId }) => tubeId));
  return rows.filter(({ kind, tubeId }) => {
    if (!isStandIn(kind as StepKind)) return true;
    const first = !spokenFor.has(tubeId);
    spokenFor.add(tubeId);
    return first;
  });
}

/** What waits for a physician's decision, part by part in the order in which they are read, each by who has waited longest. */
export function queueOrder(db: Database): readonly Waiting[] {
  const at = { now: now(db), today: today(db) };
  const waiting = asking(reviewSteps(db, at)).flatMap((row): readonly Waiting[] => {
    const line = lineOf(row, at.today);
    const place = queuePlaceOf({ step: line.step, asks: asksOf(db, row) }, at);
    return place === null ? [] : [{ ...line, ...place }];
  });
  return queueParts.flatMap((part) =>
    waiting
      .filter((line) => line.part === part)
      .toSorted((a, b) => (a.since < b.since ? -1 : a.since > b.since ? 1 : 0)),
  );
}
