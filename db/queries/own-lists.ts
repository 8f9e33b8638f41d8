import { and, asc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { ownOrders, savedFilters } from "#db/schema/own-lists.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { StepList } from "#shared/step/work-list.ts";

export type SavedFilterRow = typeof savedFilters.$inferSelect;

const filtersOfPerson = prepared((orm) =>
  orm
    .select()
    .from(savedFilters)
    .where(eq(savedFilters.staffId, sql.placeholder("staffId")))
    .orderBy(asc(savedFilters.nameKey))
    .prepare(),
);

/** One person's saved filters of every list, by name. */
export const savedFiltersOf = (db: Database, staffId: string): readonly SavedFilterRow[] =>
  filtersOfPerson(db).all({ staffId });

export const addSavedFilter: (tx: Tx, row: SavedFilterRow) => void = inserter(savedFilters);

/** Somebody else's stays. */
export function dropSavedFilter(tx: Tx, { staffId, id }: Pick<SavedFilterRow, "staffId" | "id">): void {
  tx.orm
    .delete(savedFilters)
    .where(and(eq(savedFilters.staffId, staffId), eq(savedFilters.id, id)))
    .run();
}

type Whose = { readonly staffId: string; readonly list: StepList };

const insertPlace = inserter(ownOrders);

/** A person's order of a list, in place of what stood. */
export function replaceOwnOrder(tx: Tx, { staffId, list }: Whose, stepIds: readonly string[]): void {
  tx.orm
    .delete(ownOrders)
    .where(and(eq(ownOrders.staffId, staffId), eq(ownOrders.list, list)))
    .run();
  for (const [place, stepId] of stepIds.entries()) insertPlace(tx, { staffId, list, stepId, place });
}
