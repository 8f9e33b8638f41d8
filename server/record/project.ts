import type {
  CallLineRow,
  NextVisitRow,
  Projection,
  StepRow,
  TubeRow,
  VisitRow,
} from "#db/queries/projections.ts";
import { inShort } from "#server/record/in-short.ts";
import type { CallLine } from "#shared/call/call-line.ts";
import type { Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import { asksNothing, type OutputAsks } from "#shared/review/output-asks.ts";
import { type ListRank, rankOf } from "#shared/step/list-rank.ts";
import { type OpenStep, RULES_VERSION } from "#shared/step/step.ts";
import { known } from "#shared/tube/certainty.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import { marksOf } from "#shared/tube/strip.ts";
import { bookingOf, isOpenVisit, openTubes, type Visit } from "#shared/visit/visit.ts";

/** The next that is booked for a tube and not answered yet. */
const nextVisit = (id: string, visits: readonly Visit[]): Visit | undefined =>
  visits
    .filter(isOpenVisit)
    .filter((visit) => openTubes(visit).some(({ tubeId }) => tubeId === id))
    .toSorted((a, b) => (a.on < b.on ? -1 : 1))[0];

const nextVisits = ({ tubes, visits }: PatientTubes, patientId: string): NextVisitRow[] =>
  tubes
    .flatMap(({ id: tubeId }): NextVisitRow[] => {
      const visitId = nextVisit(tubeId, visits)?.id;
      return visitId === undefined ? [] : [{ tubeId, patientId, visitId }];
    })
    .toSorted((a, b) => (a.tubeId < b.tubeId ? -1 : 1));

function tubeRow(tube: TubeState, patientId: string, asks: OutputAsks): TubeRow {
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
    strip: marksOf(tube),
    ...asks,
    state: tube,
    rulesVersion: RULES_VERSION,
  };
}

const stepRow = (step: OpenStep, rank: ListRank): Omit<StepRow, "patientId"> => ({
  id: step.id,
  tubeId: step.tubeId,
  kind: step.kind,
  rank,
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

function visitRow(visit: Visit, patientId: string, steps: readonly OpenStep[]): VisitRow {
  const { id, state, on, place, urgent } = visit;
  const here = place.kind === "here" ? place : null;
  const toSettle = steps.find((step) => step.id === `${id}:prepare visit`);
  return {
    id,
    patientId,
    state,
    visitOn: on,
    roomId: here?.roomId ?? null,
    fromMinute: place.from,
    minutes: here?.minutes ?? null,
    takesRoom: bookingOf(visit) !== null,
    urgent,
    settleBy: toSettle?.dueOn ?? null,
    visit,
    rulesVersion: RULES_VERSION,
  };
}

/** What is computed of a patient. */
export type Computed = {
  readonly state: PatientTubes;
  readonly steps: readonly OpenStep[];
  /** What the output of tubes asks for, by their ids; of the others nothing. */
  readonly asks: ReadonlyMap<string, OutputAsks>;
  readonly bornOn: Day | null;
  /** The zone of the patient's own clock, where it is another than the clinic's. */
  readonly livesIn: Zone | null;
  /** Null where nobody is rung about anything. */
  readonly call: CallLine | null;
};

function callLineRow(line: CallLine, patientId: string): CallLineRow {
  const { latest, story, dueOn, ...rest } = line;
  // A time is of the day on which the next try is: a line that is due for something else has none.
  const next = story.next?.on === dueOn ? story.next : null;
  return {
    patientId,
    dueOn,
    ...rest,
    latestOn: latest,
    nextTime: next?.at ?? null,
    nextPart: next?.part ?? null,
    rulesVersion: RULES_VERSION,
    line: story,
  };
}

/** What is written of a patient's state: computed again from events with every write, and by a rebuild. */
export const projectionFrom = (
  patientId: string,
  { state, steps, asks, bornOn, livesIn, call }: Computed,
): Projection => ({
  patient: { patientId, state: inShort(state, { bornOn, livesIn }), rulesVersion: RULES_VERSION },
  tubes: state.tubes.map((tube) => tubeRow(tube, patientId, asks.get(tube.id) ?? asksNothing)),
  steps: steps.map((step) => ({ patientId, ...stepRow(step, rankOf(step, steps)) })),
  visits: state.visits.map((visit) => visitRow(visit, patientId, steps)),
  nextVisits: nextVisits(state, patientId),
  callLine: call === null ? undefined : callLineRow(call, patientId),
});
