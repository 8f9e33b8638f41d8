import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import { openProposals } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import type { ProposedWindow } from "#server/dates/proposed-days.ts";
import { storyOf } from "#server/record/story.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { loadTube } from "#server/tubes/load-tube.ts";
import { takeHome } from "#server/tubes/take-home.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf, openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { catheterAge, tractAge } from "#shared/tube/clocks.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Everything that a tube's page shows: identity, facts, both clocks, open steps with their why, its row, its story. */
export function viewTube(db: Database, tubeId: string) {
  const { record, state, tube } = loadTube(db, tubeId);
  const { patient, books } = record;
  const day = today(db);
  const protocol = books.protocol(tube.pins.protocol);
  const question = { tube, conditions: state.conditions, age: ageOf(tube, books.bornOn), protocol };
  const { search: _search, contact: _contact, ...identity } = patient;
  const steps = openSteps(state, books);
  const isFlag = ({ kind }: OpenStep): boolean => kind === "red flag";
  return {
    today: day,
    zone: clinicOf(db).zone,
    patient: { ...identity, identifiers: identifiersOf(db, patient.id) },
    conditions: state.conditions,
    clinical: state.clinical,
    died: state.died,
    /** Reports that one of several tubes is out, of which this may be it. */
    mayBeOut: state.reportedOut.filter(({ candidates }) => candidates.some((one) => one.tube === tubeId)),
    tube,
    others: state.tubes.filter(({ id }) => id !== tubeId),
    /** Visits of the patient, and whose tubes they may be for. */
    visiting: { visits: state.visits, tubes: state.tubes },
    kind: kindOf(tube.kind),
    catheterAge: catheterAge(tube, day),
    tractAge: tractAge(tube, day),
    row: rowFor(question),
    rows: { passage: protocol.passage, planning: protocol.planning, bleeding: protocol.bleeding },
    approved: protocol.approved,
    takeHome: takeHome(db),
    /** What the clinic has to plan with, where an exchange is planned. */
    shelf: tube.plannedExchange === null ? [] : shelfOf(db),
    /** Dates that newer rows or rules would give; nothing moves until somebody confirms them. */
    proposals: openProposals(db, tubeId).map(({ id, stepKind, stood, proposed }) => ({
      id,
      step: stepKind as StepKind,
      stood: stood as ProposedWindow | null,
      proposed: proposed as ProposedWindow | null,
    })),
    /** Red flags of this tube, and of the patient. */
    flags: steps.filter((step) => isFlag(step) && (step.tubeId === tubeId || step.tubeId === null)),
    steps: steps.filter((step) => step.tubeId === tubeId && !isFlag(step)),
    story: storyOf(db, record).filter(({ tubes }) => tubes.length === 0 || tubes.includes(tubeId)),
    lastSeen: state.lastSeq,
  };
}

export type TubeView = ReturnType<typeof viewTube>;
