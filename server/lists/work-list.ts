import { savedFiltersOf } from "#db/queries/own-lists.ts";
import { type DuePlace, LIST_START } from "#db/queries/step-lists.ts";
import { placedSteps, placeOf, stepCount, unplacedSteps } from "#db/queries/work-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { lineOf } from "#server/lists/list-line.ts";
import type { Person } from "#shared/access/person.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import { type StepList, type WorkList, workLists } from "#shared/step/work-list.ts";

/** Lines of one page in the list's own order; those that somebody put first stand before them on the first page. */
export const LIST_PAGE = 50;

export type AskingList = {
  readonly list: StepList;
  readonly filter?: FilterTexts | undefined;
  readonly place?: DuePlace | undefined;
};

/** A person's filters of one list, as links are made of them. */
export const filtersOf = (db: Database, staffId: string, list: StepList) =>
  savedFiltersOf(db, staffId)
    .filter((row) => row.list === list)
    .map(({ id, name, filter }) => ({ id, name, filter }));

/**
 * One page of a list as one person sees it: on the first page what that person put in an order of their own, then the list's own order.
 * `total` counts all lines under the filter. A filter that is refused lists nothing.
 */
export function workList(db: Database, { id: staffId }: Pick<Person, "id">, asking: AskingList) {
  const { list, filter: texts, place } = asking;
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts ?? {});
  const saved = filtersOf(db, staffId, list);
  if (filter === null) return { today: day, asked, saved, placed: [], lines: [], next: null, total: 0 };
  const of = { list, staffId, today: day, filter };
  const placed = place === undefined ? placedSteps(db, of) : [];
  const rows = unplacedSteps(db, of, { place: place ?? LIST_START, limit: LIST_PAGE + 1 });
  const page = rows.slice(0, LIST_PAGE);
  const last = page.at(-1);
  return {
    today: day,
    asked,
    saved,
    placed: placed.map((row) => lineOf(row, day)),
    lines: page.map((row) => lineOf(row, day)),
    next: rows.length > LIST_PAGE && last !== undefined ? placeOf(list, last) : null,
    total: stepCount(db, of),
  };
}

/** How many stand in each list, and the filters that a person saved. A filter that is refused counts nothing. */
export function allLists(db: Database, { id: staffId }: Pick<Person, "id">, texts: FilterTexts = {}) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts);
  const countOf = (list: WorkList): number | null =>
    filter === null ? null : stepCount(db, { list, filter, today: day });
  const saved = savedFiltersOf(db, staffId);
  return {
    asked,
    lists: workLists.map((list) => ({ list, count: countOf(list) })),
    saved: saved.map(({ id, list, name, filter: kept }) => ({ id, list, name, filter: kept })),
  };
}
