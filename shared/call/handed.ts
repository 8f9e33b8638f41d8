import type { OpenStep } from "#shared/step/step.ts";

/** Whether the step of a red flag says that a named person has it. */
export const isHanded = ({ why }: Pick<OpenStep, "why">): boolean =>
  why.some(({ code }) => code === "flag-handed");
