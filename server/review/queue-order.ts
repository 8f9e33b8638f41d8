import { type ReviewStep, reviewSteps } from "#db/queries/review-steps.ts";
import type { Database } from "#db/sqlite.ts";
import { now, today } from "#server/clock.ts";
import { criterionFacts } from "#server/output/criterion-facts.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { asksNothing, type OutputAsks, outputAsks } from "#shared/review/output-asks.ts";
import { isStandIn, type QueuePlace, queueParts, queuePlaceOf } from "#shared/review/queue-part.ts";
import { RULES_VERSION } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** A step that waits for a physician, where and since when. */
export type Waiting = QueuePlace & { readonly stepId: string; readonly tubeId: string | null };

/** What was computed with the last entry; of a row that stands from before this was kept it is computed now. */
function asksOf(db: Database, { tubeId, rulesVersion, metUntil, plateauSince }: ReviewStep): OutputAsks {
  if (tubeId === null) return asksNothing;
  if (rulesVersion === RULES_VERSION) return { metUntil, plateauSince };
  const { record, state, tube } = loadTube(db, tubeId);
  return outputAsks(criterionFacts(tube, state, record.books));
}

/** Alarms and reviews; of a tube without a review the first that stands in for it. */
function asking(rows: readonly ReviewStep[]): readonly ReviewStep[] {
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
    const { id: stepId, tubeId, dueOn, wasAsked } = row;
    const step = { kind: row.kind as StepKind, dueOn, wasAsked: wasAsked === 1 };
    const place = queuePlaceOf({ step, asks: asksOf(db, row) }, at);
    return place === null ? [] : [{ stepId, tubeId, ...place }];
  });
  return queueParts.flatMap((part) =>
    waiting
      .filter((line) => line.part === part)
      .toSorted((a, b) => (a.since < b.since ? -1 : a.since > b.since ? 1 : 0)),
  );
}
