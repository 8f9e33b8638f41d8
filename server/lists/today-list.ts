import {
  callsDueToday,
  looseEndSteps,
  type StepLine,
  stepCounts,
  stepsDueToday,
  stepsPastLatest,
  urgentSteps,
} from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { lineOf } from "#server/lists/list-line.ts";

const SHOWN = 40;

/** What needs somebody now, in the order of Today: tubes out; past latest; today's visits and steps, then calls; loose ends. */
export function todayList(db: Database) {
  const day = today(db);
  const on = { today: day, limit: SHOWN };
  const lines = (rows: readonly StepLine[]) => rows.map((row) => lineOf(row, day));
  return {
    today: day,
    out: lines(urgentSteps(db, SHOWN)),
    pastLatest: lines(stepsPastLatest(db, on)),
    dueToday: lines(stepsDueToday(db, on)),
    calls: lines(callsDueToday(db, on)),
    looseEnds: lines(looseEndSteps(db, SHOWN)),
    /** How many stand behind each part, however many of them are shown. */
    counts: stepCounts(db, day),
  };
}
