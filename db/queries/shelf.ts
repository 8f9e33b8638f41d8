import { and, asc, count, eq, lte, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { shelfChanges, shelfTypes } from "#db/schema/shelf.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Instant } from "#shared/day/instant.ts";

export type ShelfRow = typeof shelfTypes.$inferSelect;
export type ShelfChangeRow = typeof shelfChanges.$inferSelect;

const byId = prepared((orm) =>
  orm
    .select()
    .from(shelfTypes)
    .where(eq(shelfTypes.id, sql.placeholder("id")))
    .prepare(),
);

const named = prepared((orm) =>
  orm
    .select()
    .from(shelfTypes)
    .where(and(eq(shelfTypes.nameKey, sql.placeholder("nameKey")), eq(shelfTypes.inUse, true)))
    .prepare(),
);

const everyType = prepared((orm) =>
  orm.select().from(shelfTypes).orderBy(asc(shelfTypes.nameKey), asc(shelfTypes.id)).prepare(),
);

const onShelf = prepared((orm) =>
  orm
    .select()
    .from(shelfTypes)
    .where(eq(shelfTypes.inUse, true))
    .orderBy(asc(shelfTypes.nameKey), asc(shelfTypes.id))
    .prepare(),
);

const counted = prepared((orm) =>
  orm.select({ types: count() }).from(shelfTypes).where(eq(shelfTypes.inUse, true)).prepare(),
);

const ofAct = prepared((orm) =>
  orm
    .select()
    .from(shelfChanges)
    .where(eq(shelfChanges.actId, sql.placeholder("actId")))
    .orderBy(asc(shelfChanges.at), asc(sql`rowid`))
    .prepare(),
);

const until = prepared((orm) =>
  orm
    .select()
    .from(shelfChanges)
    .where(lte(shelfChanges.at, sql.placeholder("at")))
    .orderBy(asc(shelfChanges.at), asc(sql`rowid`))
    .prepare(),
);

export const shelfTypeById = (db: Database, id: string): ShelfRow | undefined => byId(db).get({ id });

/** The type of that name among those on the shelf. */
export const shelfTypeNamed = (db: Database, nameKey: string): ShelfRow | undefined =>
  named(db).get({ nameKey });

/** What is on the shelf, by name. */
export const typesOnShelf = (db: Database): readonly ShelfRow[] => onShelf(db).all();

export const countOnShelf = (db: Database): number => counted(db).get()?.types ?? 0;

/** What is on the shelf or was, by name. */
export const everyShelfType = (db: Database): readonly ShelfRow[] => everyType(db).all();

/** What an act changed on the shelf, in the order in which it did. */
export const shelfChangesOfAct = (db: Database, actId: string): readonly ShelfChangeRow[] =>
  ofAct(db).all({ actId });

/** Everything that was changed on the shelf until that instant, the oldest first. */
export const shelfChangesUntil = (db: Database, at: Instant): readonly ShelfChangeRow[] =>
  until(db).all({ at });

export const addShelfType = inserter(shelfTypes);
export const addShelfChange = inserter(shelfChanges);

export function updateShelfType(tx: Tx, { id, ...row }: ShelfRow): void {
  tx.orm.update(shelfTypes).set(row).where(eq(shelfTypes.id, id)).run();
}
