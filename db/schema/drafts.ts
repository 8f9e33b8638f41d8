import { index, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areFilled, areJson, id, instant, json } from "#db/schema/columns.ts";
import { staff } from "#db/schema/staff.ts";

/** What somebody typed and has not saved, one a form and subject. Gone on save, or after 7 days. */
export const drafts = sqliteTable(
  "drafts",
  {
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    form: text("form").notNull(),
    subject: text("subject").notNull(),
    content: json("content").notNull(),
    savedAt: instant("saved_at").notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.staffId, t.form, t.subject] }),
    ...areFilled("drafts", t.form),
    ...areJson("drafts", t.content),
    // query: sweep of old drafts
    index("drafts_saved_at").on(t.savedAt),
  ],
);
