import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { partOfDay } from "#server/lists/part-of-day.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { DayPart } from "#shared/step/day-part.ts";

/** Lines of one page of a part of Today by itself. */
export const PART_PAGE = 100;

/** `page` counts from 1. */
type Asks = { readonly part: DayPart; readonly page: number; readonly filter?: FilterTexts | undefined };

/**
 * One page of one part of Today; `before` is how many lines stand on the pages before it. A page after the last holds nothing, and a
 * filter that is refused lists nothing.
 */
export function dayPart(db: Database, { part, page, filter: texts }: Asks) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts ?? {});
  const skip = (page - 1) * PART_PAGE;
  const lines =
    filter === null
      ? { lines: [], total: 0 }
      : partOfDay(db, part, { today: day, limit: PART_PAGE, skip, filter });
  return { today: day, asked, before: skip, ...lines };
}
