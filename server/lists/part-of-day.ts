import { stepsOfPart } from "#db/queries/step-lists.ts";
import type { Asked } from "#db/queries/step-rows.ts";
import type { Database } from "#db/sqlite.ts";
import { type ListLine, lineOf } from "#server/lists/list-line.ts";
import type { DayPart } from "#shared/step/day-part.ts";

/** The lines of a part that are asked for, and how many stand behind it. */
export type PartOfDay = { readonly lines: readonly ListLine[]; readonly total: number };

/** One part of Today as it stands on a day. */
export function partOfDay(db: Database, part: DayPart, asked: Asked): PartOfDay {
  const { lines, count } = stepsOfPart[part];
  return { lines: lines(db, asked).map((row) => lineOf(row, asked.today)), total: count(db, asked) };
}
