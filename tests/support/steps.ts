import { expect } from "vitest";
import { type Books, openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { Entry } from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";

/** What is open after these entries, in order. */
export const stepsAfter = (entries: readonly Entry[], of: Books = books()): OpenStep[] =>
  openSteps(fold(history(...entries)), of);

export const kindsAfter = (entries: readonly Entry[], of?: Books): StepKind[] =>
  stepsAfter(entries, of).map(({ kind }) => kind);

/** The one open step of a kind; more or fewer fail the test. */
export function stepAfter(entries: readonly Entry[], kind: StepKind, of?: Books): OpenStep {
  const found = stepsAfter(entries, of).filter((step) => step.kind === kind);
  expect(found).toHaveLength(1);
  return found[0]!;
}

/** Earliest, target, latest. */
export const dates = ({ earliest, target, latest }: OpenStep) => [earliest, target, latest];

export const whyCodes = (step: OpenStep): string[] => step.why.map(({ code }) => code);

/** The call after a removal outlasts the record, and so does what says that no open day is left for it. */
const isAfterRemoval = (step: OpenStep): boolean =>
  step.kind === "no day left" || whyCodes(step).includes("removal-call");

/** Steps that a tube itself asks for; of one that has ended without the call after its removal. */
export const ownSteps = (
  steps: readonly OpenStep[],
  { id, status }: Pick<TubeState, "id" | "status">,
): OpenStep[] =>
  steps.filter(
    (step) =>
      step.tubeId === id && step.kind !== "contradiction" && !(status === "ended" && isAfterRemoval(step)),
  );
