import {
  looseEndSteps,
  stepCounts,
  stepsDueToday,
  stepsPastLatest,
  urgentSteps,
} from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";

const SHOWN = 40;

/** What needs somebody now, in the order of Today: tubes out; past latest; today's visits, calls and steps; loose ends. */
export function todayList(db: Database) {
  const day = today(db);
  const on = { today: day, limit: SHOWN };
  return {
    today: day,
    out: urgentSteps(db, SHOWN),
    pastLatest: stepsPastLatest(db, on),
    dueToday: stepsDueToday(db, on),
    looseEnds: looseEndSteps(db, SHOWN),
    counts: stepCounts(db, day),
    shown: SHOWN,
  };
}
