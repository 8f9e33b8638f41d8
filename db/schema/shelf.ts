import { sql } from "drizzle-orm";
import { index, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { areFilled, areFlags, areJson, flag, id, instant, json } from "#db/schema/columns.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { ShelfFacts } from "#shared/shelf/shelf-type.ts";

/** A type as a change keeps it. */
export type KeptType = {
  readonly sort: CoaxialSort;
  readonly name: string;
  readonly facts: ShelfFacts;
  readonly inUse: boolean;
};

/** The types of wires, tubes, sheaths and so on that the clinic has, or had. Mutable, with its history in `shelf_changes`. */
export const shelfTypes = sqliteTable(
  "shelf_types",
  {
    id: id("id").primaryKey(),
    sort: text("sort").$type<CoaxialSort>().notNull(),
    name: text("name").notNull(),
    /** As compared: shared/shelf/name-key.ts. */
    nameKey: text("name_key").notNull(),
    /** Everything else of the type: shared/shelf/shelf-type.ts. */
    facts: json("facts").$type<ShelfFacts>().notNull(),
    /** On the shelf now. A type that was taken off keeps its row: plans and changes point to it. */
    inUse: flag("in_use").notNull(),
    updatedAt: instant("updated_at").notNull(),
  },
  (t) => [
    ...areFilled("shelf_types", t.id, t.sort, t.name, t.nameKey),
    ...areFlags("shelf_types", t.inUse),
    ...areJson("shelf_types", t.facts),
    // query: type by name, one of each on the shelf
    uniqueIndex("shelf_types_one_name").on(t.nameKey).where(sql`"in_use" = 1`),
  ],
);

/** Append only: what a type was before and after each change, and whose act that was. */
export const shelfChanges = sqliteTable(
  "shelf_changes",
  {
    id: id("id").primaryKey(),
    typeId: id("type_id")
      .notNull()
      .references(() => shelfTypes.id, { onDelete: "restrict" }),
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    /** Null where the type was new. */
    before: json("before").$type<KeptType>(),
    after: json("after").$type<KeptType>().notNull(),
    at: instant("at").notNull(),
  },
  (t) => [
    ...areJson("shelf_changes", t.before, t.after),
    // query: changes of an act (undo)
    index("shelf_changes_by_act").on(t.actId),
  ],
);
