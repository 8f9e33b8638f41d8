import type { Database } from "#db/sqlite.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { checkedOn, planBeside, seenCodes } from "#shared/fit/tube-in-place.ts";
import type { PlanDoubt } from "#shared/protocol/planning-rows.ts";
import type { Entry } from "#shared/record/form.ts";
import { reasonInWords } from "#shared/record/tube/plan-reason.ts";
import { type ExchangePlanned, exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import { doubtWords } from "#shared/words/exchange-plan.ts";

/** Another plan of the same things on the same facts: what was asked of it once is not asked again. */
const sameAs = (before: ExchangePlanned | null, now: ExchangePlanned): boolean =>
  before !== null &&
  JSON.stringify([before.things, before.checkedOn]) === JSON.stringify([now.things, now.checkedOn]);

/**
 * A planned exchange keeps what its maker saw, and the facts of the tube in place that it was checked on. Where the clinic's row asks for a
 * reason and none is given, it is refused (`plan-reason-missing`), once a tube until a fact changes.
 */
export function planAsSeen(db: Database, planned: ExchangePlanned, tubeId: string): ExchangePlanned {
  const view = viewTube(db, tubeId);
  const { tube, rows } = planBeside(view);
  const answer = exchangeAnswer(exchangePlanOf(planned), tube, { rows, shelf: [] });
  const payload = { ...planned, seen: seenCodes(answer), checkedOn: checkedOn(tube) };
  const asks: readonly PlanDoubt[] = rows.planning?.reasons?.asks ?? [];
  const offered = rows.planning?.reasons?.offered ?? [];
  const before = view.tube.plannedExchange;
  const given = sameAs(before, payload) ? (before?.reason ?? null) : null;
  const reason = reasonInWords(payload.reason ?? given, offered);
  const asked = answer.doubts.filter((doubt) => asks.includes(doubt));
  if (reason === null && asked.length > 0)
    throw new DomainError({
      code: "plan-reason-missing",
      field: "reason",
      args: {
        doubts: asked.map((doubt) => doubtWords[doubt]).join(" and "),
        offered: offered.map((words, index) => `${index + 1} ${words}`).join("; "),
      },
    });
  return { ...payload, reason };
}

/** An entry as it is kept: a planned exchange with what was seen of it, every other as it stands. */
export function withWhatWasSeen(db: Database, entry: Entry, tubeId: string | null): Entry {
  if (entry.kind !== "exchange planned" || tubeId === null) return entry;
  return { ...entry, payload: planAsSeen(db, entry.payload, tubeId) };
}
