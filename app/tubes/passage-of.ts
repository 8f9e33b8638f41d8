import type { TubePage } from "#app/tubes/tube-page.ts";
import type { PlannedPassages } from "#shared/fit/planned-passages.ts";
import { passagesOfPlan } from "#shared/fit/tube-in-place.ts";

/** The wire of the planned exchange in both tubes; null where none is planned. */
export const passagesOf = (view: TubePage): PlannedPassages | null =>
  view.tube.plannedExchange === null ? null : passagesOfPlan(view.tube.plannedExchange, view);
