import { everyShelfType } from "#db/queries/shelf.ts";
import type { Database } from "#db/sqlite.ts";
import { shelfTypeOf } from "#server/shelf/shelf-of.ts";
import { bySortAndSize } from "#shared/shelf/by-sort-and-size.ts";

/** What is on the clinic's shelf and what was taken off it, each by sort, then by size. */
export function viewShelf(db: Database) {
  const rows = everyShelfType(db).map((row) => ({
    ...shelfTypeOf(row),
    inUse: row.inUse,
    updatedAt: row.updatedAt,
  }));
  const types = bySortAndSize(rows);
  return { types: types.filter(({ inUse }) => inUse), off: types.filter(({ inUse }) => !inUse) };
}

export type ShelfView = ReturnType<typeof viewShelf>;
