import { countOpenProposals } from "#db/queries/proposals.ts";
import { dueStepCount, dueSteps } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { lineOf } from "#server/lists/list-line.ts";
import { type AskingList, filtersOf } from "#server/lists/work-list.ts";
import type { Person } from "#shared/access/person.ts";

/** Lines of one page of Exchanges: what a desktop screen holds, and a little more. */
export const DUE_PAGE = 50;

/**
 * Tubes by what their clock asks for next, one page; `next` is where the following page goes on, null at the end. `total` is how many
 * stand under the filter on all pages; nobody counts them where there is none. A filter that is refused lists nothing.
 */
export function dueList(
  db: Database,
  { id: staffId }: Pick<Person, "id">,
  { filter: texts, place }: Omit<AskingList, "list"> = {},
) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts ?? {});
  const saved = filtersOf(db, staffId, "exchanges");
  if (filter === null) return { today: day, asked, saved, lines: [], next: null, total: null, proposed: 0 };
  const of = { today: day, limit: DUE_PAGE + 1, skip: 0, filter };
  const rows = dueSteps(db, of, place);
  const page = rows.slice(0, DUE_PAGE);
  const last = page.at(-1);
  return {
    today: day,
    asked,
    saved,
    lines: page.map((row) => lineOf(row, day)),
    next: rows.length > DUE_PAGE && last !== undefined ? { dueOn: last.dueOn, id: last.id } : null,
    total: asked.words === null ? null : dueStepCount(db, of),
    /** Dates that newer tables would give and that nobody has confirmed, of the whole clinic. */
    proposed: countOpenProposals(db),
  };
}
