import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

/** What is planned for a tube cannot lie before the tube. Nothing planned, or a tube of unknown date: nothing is said. */
export const notBeforeTube = (field: string, day: Day | null, since: Day | null): readonly Refusal[] =>
  day === null || since === null || day >= since
    ? []
    : [{ code: "plan-before-tube", field, args: { day: printDay(day), since: printDay(since) } }];
