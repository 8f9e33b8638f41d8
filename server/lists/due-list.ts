import { type DuePlace, dueSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";

/** Lines of one page of Exchanges: what a desktop screen holds, and a little more. */
export const DUE_PAGE = 50;

/** Tubes by what their clock asks for next, one page; `next` is where the following page goes on, null at the end. */
export function dueList(db: Database, place?: DuePlace) {
  const lines = dueSteps(db, DUE_PAGE + 1, place);
  const page = lines.slice(0, DUE_PAGE);
  const last = page.at(-1);
  const next =
    lines.length > DUE_PAGE && last !== undefined
      ? { dueOn: last.dueOn, rank: last.rank, id: last.id }
      : null;
  return { today: today(db), lines: page, next };
}
