import { index, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areFilled, areJson, id, instant } from "#db/schema/columns.ts";
import { staff } from "#db/schema/staff.ts";

/**
 * One submit of one form. Append only. The form makes the id, so that an answer lost on the way can be asked for again.
 * Written last in its transaction, with the result: the foreign keys that point here are deferred in the migration.
 */
export const acts = sqliteTable(
  "acts",
  {
    id: id("id").primaryKey(),
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    command: text("command").notNull(),
    inputHash: text("input_hash").notNull(),
    /** JSON as text: the answer as it was given, `null` included. */
    result: text("result").notNull(),
    recordedAt: instant("recorded_at").notNull(),
  },
  (t) => [
    ...areFilled("acts", t.id, t.command, t.inputHash),
    ...areJson("acts", t.result),
    // query: who did what, newest first
    index("acts_recorded_at").on(t.recordedAt),
  ],
);
