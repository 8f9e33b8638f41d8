import type { DayWindow } from "#shared/day/clinic-days.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";

/** Which open step of a tube a visit answers, the one that says most first. */
const stepsOfAct: Readonly<Record<VisitAct, readonly StepKind[]>> = {
  exchange: ["exchange", "remove or exchange", "upsize", "downsize"],
  check: ["tube check", "reposition", "flush differently", "imaging", "review"],
  removal: ["remove", "remove or exchange"],
};

const NO_WINDOW: DayWindow = { earliest: null, target: null, latest: null };

type Dated = Pick<OpenStep, "tubeId" | "kind" | keyof DayWindow>;

/**
 * The days within which a visit for one tube is to be, from the tube's own open step; all null where no step gives them. Whatever is done,
 * it is not past the latest date of the tube's exchange: that date waits for nothing.
 */
export function windowOf(steps: readonly Dated[], tubeId: string, act: VisitAct): DayWindow {
  const own = steps.filter((step) => step.tubeId === tubeId);
  const asked = stepsOfAct[act].flatMap((kind) => own.find((step) => step.kind === kind) ?? [])[0];
  const { earliest, target, latest } = asked ?? NO_WINDOW;
  const ends = own.flatMap((step) => (step.kind === "exchange" && step.latest !== null ? [step.latest] : []));
  return { earliest, target, latest: latest ?? ends.toSorted()[0] ?? null };
}
