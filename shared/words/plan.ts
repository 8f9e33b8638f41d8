import { printDay } from "#shared/day/print-day.ts";
import type { OperatorPlan } from "#shared/tube/payloads.ts";

const actWords = { exchange: "Exchange", remove: "Remove", review: "Review" } as const satisfies Record<
  OperatorPlan["act"],
  string
>;

/** "Exchange by Fri 30 Oct 2026, Dr Example, because of the trip". */
export function printPlan({ act, by, byWhom, reason }: OperatorPlan): string {
  const because = reason === null ? null : `because ${reason}`;
  return [`${actWords[act]} by ${printDay(by)}`, byWhom, because].filter(Boolean).join(", ");
}
