import { type Books, openSteps } from "#shared/step/open-steps.ts";
import { callKinds, type OpenStep } from "#shared/step/step.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** The days of a step that a row or the calendar gives. */
export const stepDays = ["earliest", "target", "latest", "escalatesOn", "physicianOn"] as const;
export type StepDays = Readonly<Pick<OpenStep, (typeof stepDays)[number]>>;

/** One step of a tube that other pins would date otherwise; null where one of them has no such step. */
export type MovedStep = {
  readonly stepId: string;
  readonly tubeId: string;
  readonly kind: StepKind;
  readonly stood: StepDays | null;
  readonly proposed: StepDays | null;
};

const isPinnedTo = (pins: Pins, { pins: own }: TubeState): boolean =>
  own.protocol === pins.protocol && own.calendar === pins.calendar;

/** What other versions can date otherwise: a record that has ended keeps its own, nobody confirms anything of it. */
const canMove = (pins: Pins, tube: TubeState): boolean => tube.status !== "ended" && !isPinnedTo(pins, tube);

/** Whether every record that has not ended goes by these versions already, so that they move nothing. */
export const allPinnedTo = (pins: Pins, tubes: readonly TubeState[]): boolean =>
  !tubes.some((tube) => canMove(pins, tube));

const daysOf = (step: OpenStep | undefined): StepDays | null => {
  if (step === undefined) return null;
  const { earliest, target, latest, escalatesOn, physicianOn } = step;
  return { earliest, target, latest, escalatesOn, physicianOn };
};

const isSame = (a: OpenStep | undefined, b: OpenStep | undefined): boolean =>
  a?.kind === b?.kind && stepDays.every((name) => a?.[name] === b?.[name]);

const isOfCall = ({ kind }: OpenStep): boolean => callKinds.includes(kind);

/**
 * The same step among others. A patient has one call, whichever tube asks for it first. A patient has few steps: to look through them is
 * quicker than to index them.
 */
const counterpart = (step: OpenStep, steps: readonly OpenStep[]): OpenStep | undefined =>
  isOfCall(step) ? steps.find(isOfCall) : steps.find(({ id }) => id === step.id);

/** A step before and after; undefined where there is none. */
type Pair = { readonly before: OpenStep | undefined; readonly after: OpenStep | undefined };

/** In the order of the steps as they stand, and then what would come up. */
function pairs(stood: readonly OpenStep[], next: readonly OpenStep[]): Pair[] {
  const cameUp = next.filter((step) => counterpart(step, stood) === undefined);
  return [
    ...stood.map((before) => ({ before, after: counterpart(before, next) })),
    ...cameUp.map((after) => ({ before: undefined, after })),
  ];
}

/** Tubes of a patient, by their ids: all that are open, and of these those that the versions are new to. */
type Open = { readonly open: readonly string[]; readonly newTo: readonly string[] };

/**
 * Of which tubes a step that moves is told. The one call for several rests on the rows of each: it is told of all that the versions are new
 * to. Another step of the patient stands with the first record that is open, whose versions it goes by.
 */
function tubesOf({ before, after }: Pair, { open, newTo }: Open): readonly string[] {
  const named = [before, after].flatMap((step): readonly string[] => {
    if (step === undefined) return [];
    if (step.tubeId !== null) return [step.tubeId];
    return isOfCall(step) ? newTo : open.slice(0, 1);
  });
  const movable = newTo.filter((id) => named.includes(id));
  return movable.length > 0 ? movable : named.slice(0, 1);
}

/**
 * What would move if every tube of a patient went by other versions of the tables: each step whose days would be others, that would
 * come up, or that would go, once for each tube of which it is told. In the order of the steps as they stand; empty where nothing moves.
 */
export function movedSteps(patient: PatientTubes, books: Books, pins: Pins): MovedStep[] {
  if (allPinnedTo(pins, patient.tubes)) return [];
  const tubes = patient.tubes.map((tube) => (canMove(pins, tube) ? { ...tube, pins } : tube));
  const of: Open = {
    open: patient.tubes.filter(({ status }) => status !== "ended").map(({ id }) => id),
    newTo: patient.tubes.filter((tube) => canMove(pins, tube)).map(({ id }) => id),
  };
  const stood = openSteps(patient, books);
  const next = openSteps({ ...patient, tubes }, books);
  return pairs(stood, next).flatMap((pair): MovedStep[] => {
    const { before, after } = pair;
    const step = after ?? before;
    if (step === undefined || isSame(before, after)) return [];
    const days = { stood: daysOf(before), proposed: daysOf(after) };
    return tubesOf(pair, of).map((tubeId) => ({ stepId: step.id, tubeId, kind: step.kind, ...days }));
  });
}
