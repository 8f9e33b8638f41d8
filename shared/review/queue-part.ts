import type { Day } from "#shared/day/day.ts";
import type { CriterionKind } from "#shared/output/criterion/criterion.ts";
import type { OpenStep } from "#shared/step/step.ts";

/** The parts of the physician's queue, in the order in which they are read. */
export const queueParts = ["alarm", "numeric part met", "review due", "asked for"] as const;
export type QueuePart = (typeof queueParts)[number];

/**
 * Where a tube stands in the queue by its alarm or its review. A review that is not due and that nobody asked for waits for its day, unless
 * the numeric part of the clinic's criterion is met: null until then.
 */
export function queuePartOf(
  { kind, dueOn, why }: Pick<OpenStep, "kind" | "dueOn" | "why">,
  criterion: CriterionKind | null,
  today: Day,
): QueuePart | null {
  if (kind === "alarm") return "alarm";
  if (criterion === "numeric part met") return "numeric part met";
  if (dueOn <= today) return "review due";
  return why.some(({ code }) => code === "review-asked") ? "asked for" : null;
}
