import { compareProjections, type Difference } from "#db/compare-projections.ts";
import { patientsWithEvents } from "#db/queries/events.ts";
import { projectionOf, type StepRow } from "#db/queries/projections.ts";
import { propose } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { now } from "#server/clock.ts";
import { writeProjection } from "#server/record/append.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { RULES_VERSION } from "#shared/step/step.ts";

/** Computes every patient's projection from events alone, in place of whatever stands. Returns how many patients. */
export function rebuildAll(db: Database, progress: (done: number, of: number) => void = () => {}): number {
  const patients = patientsWithEvents(db);
  inTransaction(db, (tx) => {
    patients.forEach((patientId, index) => {
      writeProjection(tx, loadRecord(tx, patientId));
      if (index % 1000 === 999) progress(index + 1, patients.length);
    });
  });
  return patients.length;
}

export type Rebuilt = {
  /** Rows of this code's own rules that do not stand as their events make them: something wrote past the record. */
  readonly spoiled: readonly Difference[];
  /** Rows of older rules that would come out otherwise now. */
  readonly superseded: readonly Difference[];
};

const byOlderRules = ({ rulesVersion }: Difference): boolean =>
  rulesVersion !== null && rulesVersion !== RULES_VERSION;

/** Compares what stands with a rebuild of the same events in an empty database. */
export function compareWithRebuilt(stands: Database, fresh: Database): Rebuilt {
  const differences = compareProjections(stands, fresh);
  return {
    spoiled: differences.filter((difference) => !byOlderRules(difference)),
    superseded: differences.filter(byOlderRules),
  };
}

const windowOf = ({ earliestOn, targetOn, latestOn }: StepRow) => ({ earliestOn, targetOn, latestOn });

/** Makes a proposal of each step that newer rules would date otherwise. What stands stays until a person confirms. */
export function proposeSuperseded(stands: Database, fresh: Database, { superseded }: Rebuilt): number {
  const steps = superseded.filter(({ table, found }) => table === "open_steps" && found === "different");
  return inTransaction(stands, (tx) => {
    let made = 0;
    for (const { id, patientId } of steps) {
      const stood = projectionOf(stands, patientId).steps.find((step) => step.id === id);
      const proposed = projectionOf(fresh, patientId).steps.find((step) => step.id === id);
      if (!stood?.tubeId || proposed === undefined) continue;
      if (JSON.stringify(windowOf(stood)) === JSON.stringify(windowOf(proposed))) continue;
      propose(tx, {
        id: `${id}:rules-${RULES_VERSION}`,
        patientId,
        tubeId: stood.tubeId,
        stepKind: stood.kind,
        stood: windowOf(stood),
        proposed: windowOf(proposed),
        cause: `rules ${RULES_VERSION}`,
        createdAt: now(tx),
        settledByEvent: null,
      });
      made += 1;
    }
    return made;
  });
}
