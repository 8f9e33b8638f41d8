import { type Books, openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
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

/** Whether every record that has not ended goes by these versions already, so that they move nothing. */
export const allPinnedTo = (pins: Pins, tubes: readonly TubeState[]): boolean =>
  tubes.every((tube) => tube.status === "ended" || isPinnedTo(pins, tube));

const daysOf = (step: OpenStep | undefined): StepDays | null => {
  if (step === undefined) return null;
  const { earliest, target, latest, escalatesOn, physicianOn } = step;
  return { earliest, target, latest, escalatesOn, physicianOn };
};

const isSame = (a: OpenStep | undefined, b: OpenStep | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && stepDays.every((name) => a[name] === b[name]));

/** A patient has few steps: to look through them is quicker than to index them. */
const withId = (steps: readonly OpenStep[], id: string): OpenStep | undefined =>
  steps.find((step) => step.id === id);

/**
 * What would move if every tube of a patient went by other versions of the tables: each step whose days would be others, that would
 * come up, or that would go. A record that has ended keeps its versions: nobody confirms anything of it. A step of the patient stands with the first record that is open, whose versions it goes by. In the order of
 * the steps as they stand; empty where nothing moves.
 */
export function movedSteps(patient: PatientTubes, books: Books, pins: Pins): MovedStep[] {
  if (allPinnedTo(pins, patient.tubes)) return [];
  const first = patient.tubes.find(({ status }) => status !== "ended")?.id;
  const tubes = patient.tubes.map((tube) =>
    tube.status === "ended" || isPinnedTo(pins, tube) ? tube : { ...tube, pins },
  );
  const stood = openSteps(patient, books);
  const next = openSteps({ ...patient, tubes }, books);
  const cameUp = next.filter(({ id }) => withId(stood, id) === undefined);
  return [...stood, ...cameUp].flatMap((step): MovedStep[] => {
    const tubeId = step.tubeId ?? first;
    const before = withId(stood, step.id);
    const after = withId(next, step.id);
    if (tubeId === undefined || isSame(before, after)) return [];
    return [{ stepId: step.id, tubeId, kind: step.kind, stood: daysOf(before), proposed: daysOf(after) }];
  });
}
