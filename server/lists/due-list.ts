import { type DuePlace, dueSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { lineOf } from "#server/lists/list-line.ts";

/** Lines of one page of Exchanges: what a desktop screen holds, and a little more. */
export const DUE_PAGE = 50;

/** Tubes by what their clock asks for next, one page; `next` is where the following page goes on, null at the end. */
export function dueList(db: Database, place?: DuePlace) {
  const rows = dueSteps(db, DUE_PAGE + 1, place);
  const page = rows.slice(0, DUE_PAGE);
  const last = page.at(-1);
  const next = rows.length > DUE_PAGE && last !== undefined ? { dueOn: last.dueOn, id: last.id } : null;
  const day = today(db);
  return { today: day, lines: page.map((row) => lineOf(row, day)), next };
}
