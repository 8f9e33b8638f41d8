import type { Database } from "#db/sqlite.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { checkedOn, planBeside, seenCodes } from "#shared/fit/tube-in-place.ts";
import { reasonMissing, reasonOf } from "#shared/record/tube/plan-reason.ts";
import { type ExchangePlanned, exchangePlanOf } from "#shared/tube/exchange-planned.ts";

/**
 * A planned exchange keeps what its maker saw, and the facts of the tube in place that it was checked on. Where the clinic's row asks for a
 * reason and none is given, it is refused (`plan-reason-missing`), once a tube until a fact changes.
 */
export function planAsSeen(db: Database, planned: ExchangePlanned, tubeId: string): ExchangePlanned {
  const view = viewTube(db, tubeId);
  const { tube, rows } = planBeside(view);
  const answer = exchangeAnswer(exchangePlanOf(planned), tube, { rows, shelf: [] });
  const payload = { ...planned, seen: seenCodes(answer), checkedOn: checkedOn(tube) };
  const reasons = rows.planning?.reasons ?? null;
  const reason = reasonOf({ before: view.tube.plannedExchange, now: payload }, reasons);
  const missing = reasonMissing(reason, answer.doubts, reasons);
  if (missing !== null) throw new DomainError(missing);
  return { ...payload, reason };
}
