import type { TubePage } from "#app/tubes/tube-page.ts";
import { type ExchangeAnswer, exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { changedSince, checkedOn, planBeside } from "#shared/fit/tube-in-place.ts";
import { type CheckedOn, exchangePlanOf } from "#shared/tube/exchange-planned.ts";

/** What the facts of today say of the exchange that is planned, and which facts are others than those it was checked on. */
export type PlanAnswer = { readonly answer: ExchangeAnswer; readonly changed: readonly (keyof CheckedOn)[] };

/** Null where none is planned. */
export function planAnswer(view: TubePage): PlanAnswer | null {
  const planned = view.tube.plannedExchange;
  if (planned === null) return null;
  const { tube, rows } = planBeside(view);
  return {
    answer: exchangeAnswer(exchangePlanOf(planned), tube, { rows, shelf: view.shelf }),
    changed: planned.checkedOn === undefined ? [] : changedSince(planned.checkedOn, checkedOn(tube)),
  };
}
