import type { Day } from "#shared/day/day.ts";
import type { MovedStep, StepDays } from "#shared/step/repinned.ts";
import type { Pins } from "#shared/tube/event.ts";

/** Days of a step as a proposal keeps them. Those of the ladder stand in proposals of newer releases only. */
export type ProposedWindow = Readonly<Record<"earliestOn" | "targetOn" | "latestOn", Day | null>> &
  Readonly<Partial<Record<"escalatesOn" | "physicianOn", Day | null>>>;

const windowOf = ({ earliest, target, latest, escalatesOn, physicianOn }: StepDays): ProposedWindow => ({
  earliestOn: earliest,
  targetOn: target,
  latestOn: latest,
  escalatesOn,
  physicianOn,
});

/** What stands and what is proposed of a step; null where it has or would have none. */
export const proposedDays = ({ stood, proposed }: MovedStep) => ({
  stood: stood === null ? null : windowOf(stood),
  proposed: proposed === null ? null : windowOf(proposed),
});

/** Which tables of a tube are not the newest: "protocol 3, calendar 2". */
export function causeOf(own: Pins | undefined, newest: Pins): string {
  const parts = (["protocol", "calendar"] as const).filter((table) => own?.[table] !== newest[table]);
  return parts.map((table) => `${table} ${newest[table]}`).join(", ");
}
