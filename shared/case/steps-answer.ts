import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { type OpenStep, ownerOn, type Why } from "#shared/step/step.ts";

/** "left exchange", "patient whereabouts"; a second of the same is "left contradiction 2". */
export function named<T>(
  items: readonly T[],
  nameOf: (item: T) => string,
): readonly (readonly [string, T])[] {
  const seen = new Map<string, number>();
  return items.map((item) => {
    const name = nameOf(item);
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return [times === 1 ? name : `${name} ${times}`, item];
  });
}

export const whyAnswer = (lines: readonly Why[]): Json =>
  Object.fromEntries(named(lines, ({ code }) => code).map(([name, { args }]) => [name, args]));

const stepAnswer = (step: OpenStep, { today }: Looking): Json => ({
  earliest: step.earliest,
  target: step.target,
  latest: step.latest,
  due: step.dueOn,
  provisional: step.provisional,
  owner: ownerOn(step, today).role,
  ownerFrom: step.ownerFrom,
  escalatesOn: step.escalatesOn,
  physicianOn: step.physicianOn,
  why: whyAnswer(step.why),
});

/** Every open step by its tube and kind, in their order: the first of `order` is the next step. */
export function stepsAnswer(looking: Looking): Json {
  const steps = named(looking.steps, ({ tubeId, kind }) => `${tubeId ?? "patient"} ${kind}`);
  return {
    order: steps.map(([name]) => name),
    steps: Object.fromEntries(steps.map(([name, step]) => [name, stepAnswer(step, looking)])),
  };
}
