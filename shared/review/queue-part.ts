import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { OutputAsks } from "#shared/review/output-asks.ts";
import type { OpenStep } from "#shared/step/step.ts";
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

export type Queued = {
  /** `wasAsked`: somebody asked for the review. */
  readonly step: Pick<OpenStep, "kind" | "dueOn"> & { readonly wasAsked: boolean };
  readonly asks: OutputAsks;
};

/** Where a line stands, and since when it waits there. */
export type QueuePlace = { readonly part: QueuePart; readonly since: Day };

/**
 * Where a tube stands in the queue by its alarm or its review. A review that is not due and that nobody asked for waits for its day, unless
 * the output says to look sooner: the numeric part of the clinic's criterion is met, or a plateau that no review has seen. Null until then.
 */
export function queuePlaceOf({ step, asks }: Queued, at: { now: Instant; today: Day }): QueuePlace | null {
  const { kind, dueOn: since, wasAsked } = step;
  if (kind === "alarm") return { part: "alarm", since };
  if (asks.metUntil !== null && at.now <= asks.metUntil) return { part: "numeric part met", since };
  if (asks.plateauSince !== null) return { part: "plateau", since: asks.plateauSince };
  if (isStandIn(kind)) return null;
  if (since <= at.today) return { part: "review due", since };
  return wasAsked ? { part: "asked for", since } : null;
}
