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

const isSame = (a: StepDays | null, b: StepDays | null): boolean =>
  a === b || (a !== null && b !== null && stepDays.every((name) => a[name] === b[name]));

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
  const next = new Map(openSteps({ ...patient, tubes }, books).map((step) => [step.id, step]));
  const stands = new Set(stood.map(({ id }) => id));
  const cameUp = [...next.values()].filter(({ id }) => !stands.has(id));
  return [...stood, ...cameUp].flatMap((step): MovedStep[] => {
    const tubeId = step.tubeId ?? first;
    const before = stands.has(step.id) ? daysOf(step) : null;
    const after = daysOf(next.get(step.id));
    if (tubeId === undefined || isSame(before, after)) return [];
    return [{ stepId: step.id, tubeId, kind: step.kind, stood: before, proposed: after }];
  });
}
