import type { ListLine } from "#app/lists/list-line.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { isUrgent } from "#shared/step/step.ts";
import { ownerWords } from "#shared/words/steps.ts";

/** How loud a line is: needs someone now, cannot be told, or simply comes in its turn. */
export type Weight = "now" | "cannot tell" | "in turn";

export function weightOf({ step, tube }: ListLine, today: Day): Weight {
  if (isUrgent(step.kind) || (step.latest !== null && step.latest < today)) return "now";
  const undated = tube !== null && tube.clockEarliest === null;
  return undated || step.kind === "no row" ? "cannot tell" : "in turn";
}

/** The person by name, with whoever stands beside them by then; else the role. */
export function ownerText({ role, rung, name }: ListLine["owner"]): string {
  if (name === null || rung === 2) return ownerWords({ role, rung });
  return rung === 1 ? `${name}, asks a physician` : name;
}

/** Steps that stand in for a date which nobody knows: they have no window. */
export const isDated = ({ kind }: ListLine["step"]): boolean =>
  kind !== "assess the date" && kind !== "no row";

/** The next date that matters of a window: the target until it has come, then the latest date. */
function nextDate(step: ListLine["step"], today: Day): string | null {
  const { target, latest } = step;
  if (!isDated(step)) return "due now until a date is known";
  if (target !== null && target >= today) return `target ${printDay(target)}`;
  if (latest !== null) return `latest ${printDay(latest)}`;
  return target === null ? null : `target was ${printDay(target)}`;
}

const daysIn = (days: number): string => (days === 1 ? "1 day in" : `${days} days in`);

function ageIn(tube: ListLine["tube"], today: Day): string | null {
  if (tube === null || tube.clockEarliest === null) return null;
  const most = daysIn(daysBetween(tube.clockEarliest, today));
  return tube.clockEarliest === tube.clockLatest ? most : `up to ${most}`;
}

/** The figures behind a line's sentence: "latest Mon 26 Oct 2026, 84 days in", or the planned day in place of the date. */
export function figuresOf({ step, tube }: ListLine, today: Day): string {
  const planned = tube?.plannedOn == null ? null : `planned ${printDay(tube.plannedOn)}`;
  return [planned ?? nextDate(step, today), ageIn(tube, today)]
    .filter((figure) => figure !== null)
    .join(", ");
}
