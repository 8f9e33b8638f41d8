import type { Projection, StepRow, TubeRow } from "#db/queries/projections.ts";
import { isLooseEnd, isUrgent, type OpenStep, RULES_VERSION } from "#shared/step/step.ts";
import { known } from "#shared/tube/certainty.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { PatientTubes, StoryLine, TubeState } from "#shared/tube/state.ts";
import type { StripMark } from "#shared/tube/strip.ts";

/** Rank in lists: what needs somebody now, dated work, then what is missing in a record. */
const rankOf = (step: OpenStep): number => (isUrgent(step.kind) ? 0 : isLooseEnd(step.kind) ? 2 : 1);

/** Events from the start of the catheter's clock on: what the dwell strip marks. */
function stripOf(tube: TubeState): readonly StripMark[] {
  const since = tube.catheter.since.earliest;
  const marks = (line: StoryLine): readonly StripMark[] =>
    line.when.earliest === null || (since !== null && line.when.earliest < since)
      ? []
      : [{ on: line.when.earliest, kind: line.kind }];
  return tube.story.filter((line) => line.eventId !== tube.catheter.eventId).flatMap(marks);
}

function tubeRow(tube: TubeState, patientId: string): TubeRow {
  return {
    id: tube.id,
    patientId,
    kind: tube.kind,
    role: tube.role,
    side: known(tube.side) ?? null,
    status: tube.status,
    name: tubeName(tube),
    sizeUnits: known(tube.size) ?? null,
    clockEarliest: tube.catheter.since.earliest,
    clockLatest: tube.catheter.since.latest,
    plannedOn: tube.status === "in" ? (tube.plannedExchange?.on ?? null) : null,
    strip: stripOf(tube),
    state: tube,
    rulesVersion: RULES_VERSION,
  };
}

const stepRow = (step: OpenStep, patientId: string): StepRow => ({
  id: step.id,
  patientId,
  tubeId: step.tubeId,
  kind: step.kind,
  rank: rankOf(step),
  earliestOn: step.earliest,
  targetOn: step.target,
  latestOn: step.latest,
  dueOn: step.dueOn,
  provisional: step.provisional,
  ownerRole: step.owner.role,
  ownerStaffId: step.owner.staffId,
  ownerFrom: step.ownerFrom,
  escalatesOn: step.escalatesOn,
  physicianOn: step.physicianOn,
  why: step.why,
  pinsProtocol: step.pins.protocol,
  pinsCalendar: step.pins.calendar,
  rulesVersion: RULES_VERSION,
});

/** What is written of a patient's state: computed again from events with every write, and by a rebuild. */
export const projectionFrom = (
  patientId: string,
  state: PatientTubes,
  steps: readonly OpenStep[],
): Projection => ({
  tubes: state.tubes.map((tube) => tubeRow(tube, patientId)),
  steps: steps.map((step) => stepRow(step, patientId)),
});
