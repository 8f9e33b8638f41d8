import {
  addProposal,
  dropProposal,
  openProposalsOfPatient,
  type ProposalRow,
} from "#db/queries/proposals.ts";
import { newestVersions } from "#db/queries/versions.ts";
import type { Tx } from "#db/transaction.ts";
import { now } from "#server/clock.ts";
import { causeOf, proposedDays } from "#server/dates/proposed-days.ts";
import { newId } from "#server/ids.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { type MovedStep, movedSteps } from "#shared/step/repinned.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** Proposals of newer rules come from a rebuild, and stay until somebody confirms them. */
const isOfRules = ({ cause }: ProposalRow): boolean => cause.startsWith("rules ");

type Proposed = Pick<ProposalRow, "tubeId" | "stepKind" | "stood" | "proposed" | "cause">;

const sameAs = (a: Proposed, b: Proposed): boolean =>
  a.tubeId === b.tubeId &&
  a.stepKind === b.stepKind &&
  a.cause === b.cause &&
  JSON.stringify([a.stood, a.proposed]) === JSON.stringify([b.stood, b.proposed]);

type Of = { readonly patientId: string; readonly tubes: readonly Pick<TubeState, "id" | "pins">[] };

/** What the newest versions would move. */
type Moved = { readonly steps: readonly MovedStep[]; readonly newest: Pins };

/** Puts what is proposed of a patient in place of what was. What is proposed already keeps its row, and with it what a page has seen. */
export function writeProposals(tx: Tx, { patientId, tubes }: Of, { steps, newest }: Moved): void {
  const stands = openProposalsOfPatient(tx, patientId).filter((row) => !isOfRules(row));
  if (stands.length === 0 && steps.length === 0) return;
  const next = steps.map((step): Proposed => {
    const own = tubes.find(({ id }) => id === step.tubeId)?.pins;
    return {
      tubeId: step.tubeId,
      stepKind: step.kind,
      ...proposedDays(step),
      cause: causeOf(own, newest),
    };
  });
  for (const row of stands) if (!next.some((one) => sameAs(one, row))) dropProposal(tx, row.id);
  for (const one of next) {
    if (stands.some((row) => sameAs(row, one))) continue;
    addProposal(tx, { ...one, id: newId(), patientId, createdAt: now(tx), settledByEvent: null });
  }
}

type Counted = { readonly patientId: string; readonly state: PatientTubes; readonly books: Books };

/** What the newest tables would move of a patient is proposed; what no longer would is no longer proposed. */
export function repropose(tx: Tx, { patientId, state, books }: Counted): void {
  const newest = newestVersions(tx);
  if (newest === null) return;
  const steps = movedSteps(state, books, newest);
  writeProposals(tx, { patientId, tubes: state.tubes }, { steps, newest });
}
