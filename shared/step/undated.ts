import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Steps that stand in for a date which nobody knows, as long as no latest date is known either. They are due at once. */
export const undatedKinds = [
  "assess the date",
  "no row",
  "remove or exchange",
] as const satisfies readonly StepKind[];

/** Whether a tube's step has no date of its own: it says only that a date is to be found. */
export const isUndated = ({ kind, latest }: Pick<OpenStep, "kind" | "latest">): boolean =>
  latest === null && undatedKinds.some((undated) => undated === kind);
