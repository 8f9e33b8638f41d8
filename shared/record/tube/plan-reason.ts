import type { Refusal } from "#shared/errors/refusal.ts";
import type { PlanDoubt, PlanningRows } from "#shared/protocol/planning-rows.ts";
import type { ExchangePlanned } from "#shared/tube/exchange-planned.ts";
import { doubtWords } from "#shared/words/exchange-plan.ts";

/** "2" is the second reason on offer; any other text stands as typed. */
export function reasonInWords(typed: string | null, offered: readonly string[]): string | null {
  if (typed === null || !/^[1-9]$/.test(typed)) return typed;
  return offered[Number(typed) - 1] ?? typed;
}

/** What was planned before of the same tube, and what is planned now. */
export type Plans = {
  readonly before: ExchangePlanned | null;
  readonly now: Pick<ExchangePlanned, "things" | "checkedOn" | "reason">;
};

/** Another plan of the same things on the same facts: what was asked of it once is not asked again. */
const isSame = ({ before, now }: Plans): boolean =>
  before !== null &&
  JSON.stringify([before.things, before.checkedOn]) === JSON.stringify([now.things, now.checkedOn]);

/** Why a plan goes on, in words; of the same plan again the reason that was given stands. */
export function reasonOf(plans: Plans, rows: PlanningRows["reasons"]): string | null {
  const given = isSame(plans) ? (plans.before?.reason ?? null) : null;
  return reasonInWords(plans.now.reason ?? given, rows?.offered ?? []);
}

/** `plan-reason-missing` where the clinic's row asks for a reason and none is given; null where it may go on. */
export function reasonMissing(
  reason: string | null,
  doubts: readonly PlanDoubt[],
  rows: PlanningRows["reasons"],
): Refusal | null {
  const asked = doubts.filter((doubt) => rows?.asks.includes(doubt));
  if (reason !== null || rows === null || asked.length === 0) return null;
  const args = {
    doubts: asked.map((doubt) => doubtWords[doubt]).join(" and "),
    offered: rows.offered.map((words, index) => `${index + 1} ${words}`).join("; "),
  };
  return { code: "plan-reason-missing", field: "reason", args };
}
