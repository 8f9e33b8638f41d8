import type { Day } from "#shared/day/day.ts";
import type { Criterion } from "#shared/output/criterion/criterion.ts";
import type { Plateau } from "#shared/output/criterion/plateau.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { LastReview } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** The parts of the physician's queue, in the order in which they are read: alarms, what the output says, what is due, what was asked for. */
export const queueParts = ["alarm", "numeric part met", "plateau", "review due", "asked for"] as const;
export type QueuePart = (typeof queueParts)[number];

/** What stands in the queue for its tube, where no review is open of one that comes out by its output: such a drain without a date. */
export const standIns = [
  "assess the date",
  "no row",
  "remove or exchange",
  "exchange",
  "remove",
] as const satisfies readonly StepKind[];

export const isStandIn = (kind: StepKind): boolean => standIns.some((standIn) => standIn === kind);

/** The plateau that a criterion tells beside its verdict. */
export const plateauIn = (criterion: Criterion | null): Plateau | undefined =>
  criterion?.beside.find((one) => one.code === "plateau");

/**
 * A plateau that a review rested on waits for the day that this review set; it is new again once it was gone. A decision without what was
 * seen in it has seen none.
 */
function isNew({ readings }: Plateau, lastReview: Pick<LastReview, "evidence"> | null): boolean {
  const seen = lastReview?.evidence?.readings ?? [];
  return readings.some((id) => !seen.includes(id));
}

export type Queued = {
  readonly step: Pick<OpenStep, "kind" | "dueOn" | "why">;
  /** Null for an alarm, which waits for no criterion. */
  readonly criterion: Criterion | null;
  readonly lastReview: Pick<LastReview, "evidence"> | null;
};

/**
 * Where a tube stands in the queue by its alarm or its review. A review that is not due and that nobody asked for waits for its day, unless
 * the output says to look sooner: the numeric part of the clinic's criterion is met, or a plateau that no review has seen. Null until then.
 */
export function queuePartOf({ step, criterion, lastReview }: Queued, today: Day): QueuePart | null {
  if (step.kind === "alarm") return "alarm";
  if (criterion?.kind === "numeric part met") return "numeric part met";
  const plateau = plateauIn(criterion);
  if (plateau !== undefined && isNew(plateau, lastReview)) return "plateau";
  if (isStandIn(step.kind)) return null;
  if (step.dueOn <= today) return "review due";
  return step.why.some(({ code }) => code === "review-asked") ? "asked for" : null;
}
