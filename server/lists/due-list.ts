import { countOpenProposals } from "#db/queries/proposals.ts";
import { type DuePlace, dueStepCount, dueSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { lineOf } from "#server/lists/list-line.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";

/** Lines of one page of Exchanges: what a desktop screen holds, and a little more. */
export const DUE_PAGE = 50;

/**
 * Tubes by what their clock asks for next, one page; `next` is where the following page goes on, null at the end. `total` is how many
 * stand under the filter on all pages; nobody counts them where there is none. A filter that is refused lists nothing.
 */
export function dueList(db: Database, texts: FilterTexts = {}, place?: DuePlace) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts);
  if (filter === null) return { today: day, asked, lines: [], next: null, total: null, proposed: 0 };
  const of = { today: day, limit: DUE_PAGE + 1, skip: 0, filter };
  const rows = dueSteps(db, of, place);
  const page = rows.slice(0, DUE_PAGE);
  const last = page.at(-1);
  return {
    today: day,
    asked,
    lines: page.map((row) => lineOf(row, day)),
    next: rows.length > DUE_PAGE && last !== undefined ? { dueOn: last.dueOn, id: last.id } : null,
    total: asked.words === null ? null : dueStepCount(db, of),
    /** Dates that newer tables would give and that nobody has confirmed, of the whole clinic. */
    proposed: countOpenProposals(db),
  };
}
