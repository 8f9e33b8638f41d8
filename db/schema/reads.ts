import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areFilled, id, instant } from "#db/schema/columns.ts";
import { staff } from "#db/schema/staff.ts";

/** Who saw what, when. Append only. */
export const reads = sqliteTable(
  "reads",
  {
    id: integer("id").primaryKey(),
    at: instant("at").notNull(),
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    procedure: text("procedure").notNull(),
    subjectKind: text("subject_kind").notNull(),
    /** The id of a patient or tube; for lists and exports what was asked. */
    subjectId: text("subject_id").notNull(),
  },
  (t) => [
    ...areFilled("reads", t.procedure, t.subjectKind),
    // query: who saw this patient or tube, newest first
    index("reads_by_subject").on(t.subjectKind, t.subjectId, t.at),
    // query: what was seen, newest first
    index("reads_by_time").on(t.at),
  ],
);
