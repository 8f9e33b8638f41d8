import {
  type Asked,
  callsDueToday,
  looseEndSteps,
  type StepCounts,
  type StepLine,
  stepCounts,
  stepsDueToday,
  stepsPastLatest,
  urgentSteps,
} from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { lineOf } from "#server/lists/list-line.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";

const SHOWN = 40;

const nobody = { urgent: 0, pastLatest: 0, dueToday: 0, calls: 0, looseEnds: [] } satisfies StepCounts;

/**
 * What needs somebody now, in the order of Today: tubes out; past latest; today's visits and steps, then calls; loose ends. A filter that
 * is refused lists nothing.
 */
export function todayList(db: Database, texts: FilterTexts = {}) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts);
  const list = (stepsOf: (db: Database, of: Asked) => readonly StepLine[]) =>
    filter === null ? [] : stepsOf(db, { today: day, limit: SHOWN, filter }).map((row) => lineOf(row, day));
  return {
    today: day,
    asked,
    out: list(urgentSteps),
    pastLatest: list(stepsPastLatest),
    dueToday: list(stepsDueToday),
    calls: list(callsDueToday),
    looseEnds: list(looseEndSteps),
    /** How many stand behind each part, however many of them are shown. */
    counts: filter === null ? nobody : stepCounts(db, { today: day, limit: SHOWN, filter }),
  };
}
