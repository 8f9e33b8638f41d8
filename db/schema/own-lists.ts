import { sql } from "drizzle-orm";
import { check, index, integer, primaryKey, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { areFilled, areJson, id, instant, json } from "#db/schema/columns.ts";
import { staff } from "#db/schema/staff.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { StepList } from "#shared/step/work-list.ts";

/** A filter of a list that somebody keeps under a name of their own. Words of an address; nothing of a patient. */
export const savedFilters = sqliteTable(
  "saved_filters",
  {
    id: id("id").primaryKey(),
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    list: text("list").$type<StepList>().notNull(),
    name: text("name").notNull(),
    /** By which two names are one: letters alone, in one case. */
    nameKey: text("name_key").notNull(),
    filter: json("filter").$type<FilterTexts>().notNull(),
    savedAt: instant("saved_at").notNull(),
  },
  (t) => [
    ...areFilled("saved_filters", t.list, t.name),
    ...areJson("saved_filters", t.filter),
    // query: one person's filters, and whether a name of theirs is taken
    uniqueIndex("saved_filters_by_name").on(t.staffId, t.nameKey),
  ],
);

/** The order in which somebody goes through the first lines of a list. A step that is done keeps its place here until the order is written next. */
export const ownOrders = sqliteTable(
  "own_orders",
  {
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    list: text("list").$type<StepList>().notNull(),
    /** No reference: steps are written again with each entry of their patient, under the same id. */
    stepId: id("step_id").notNull(),
    place: integer("place").notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.staffId, t.list, t.stepId] }),
    ...areFilled("own_orders", t.list),
    check("own_orders_place_counts", sql`${t.place} >= 0`),
    // query: one person's order of a list
    index("own_orders_in_order").on(t.staffId, t.list, t.place),
  ],
);
