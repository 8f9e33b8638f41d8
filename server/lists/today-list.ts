import { looseEndKinds } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { askedFilter } from "#server/lists/asked-filter.ts";
import { type PartOfDay, partOfDay } from "#server/lists/part-of-day.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { DayPart } from "#shared/step/day-part.ts";

/** Lines of each part that Today shows. */
const SHOWN = 40;

const nobody: PartOfDay = { lines: [], total: 0 };

/** What needs somebody now, in the parts of Today. A filter that is refused lists nothing. */
export function todayList(db: Database, texts: FilterTexts = {}) {
  const day = today(db);
  const { filter, asked } = askedFilter(db, texts);
  const of = (part: DayPart): PartOfDay =>
    filter === null ? nobody : partOfDay(db, part, { today: day, limit: SHOWN, skip: 0, filter });
  return {
    today: day,
    asked,
    parts: {
      out: of("out"),
      "past-latest": of("past-latest"),
      undated: of("undated"),
      visits: of("visits"),
      due: of("due"),
      calls: of("calls"),
      "loose-ends": of("loose-ends"),
    } satisfies Record<DayPart, PartOfDay>,
    /** How many loose ends there are of each kind. */
    looseEnds: filter === null ? [] : looseEndKinds(db, { today: day, filter }),
  };
}
