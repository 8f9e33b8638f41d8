import { sql } from "drizzle-orm";
import { check, index, integer, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { areFilled, areJson, id, instant, json } from "#db/schema/columns.ts";
import { patients } from "#db/schema/patients.ts";
import { staff } from "#db/schema/staff.ts";

/** A sheet that somebody brought and that waits for its answers. Gone 7 days after it was last touched, like a draft. */
export const sheets = sqliteTable(
  "sheets",
  {
    id: id("id").primaryKey(),
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    fileName: text("file_name").notNull(),
    /** The cells as text, row by row: shared/sheet/sheet.ts. */
    cells: json("cells").notNull(),
    /** What was answered of its columns, dates and names: shared/sheet/answers.ts. */
    answers: json("answers").notNull(),
    touchedAt: instant("touched_at").notNull(),
  },
  (t) => [
    ...areFilled("sheets", t.id, t.fileName),
    ...areJson("sheets", t.cells, t.answers),
    // query: sweep of old sheets, newest first
    index("sheets_touched_at").on(t.touchedAt),
  ],
);

/** Which field a column of that heading was matched to last time. */
export const sheetColumns = sqliteTable(
  "sheet_columns",
  {
    /** As compared: lower case, signs and doubled blanks removed. */
    heading: text("heading").primaryKey(),
    field: text("field").notNull(),
    updatedAt: instant("updated_at").notNull(),
  },
  (t) => [...areFilled("sheet_columns", t.heading, t.field)],
);

/** A sheet that was brought in: one act, undone as one. Append only. */
export const sheetBatches = sqliteTable(
  "sheet_batches",
  {
    actId: id("act_id")
      .primaryKey()
      .references(() => acts.id),
    fileName: text("file_name").notNull(),
    /** Rows below the heading, whatever became of them. */
    rowsInSheet: integer("rows_in_sheet").notNull(),
  },
  (t) => [
    check("sheet_batches_rows_counted", sql`${t.rowsInSheet} >= 0`),
    ...areFilled("sheet_batches", t.fileName),
  ],
);

/** Which row of which sheet a tube came from, so that the same row brought again changes nothing. Append only. */
export const sheetRows = sqliteTable(
  "sheet_rows",
  {
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    /** As the spreadsheet numbers it. */
    row: integer("row").notNull(),
    /** Of what was understood, not of how it was written. */
    digest: text("digest").notNull(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    tubeId: id("tube_id").notNull(),
    /** What the row was typed into the tube's form as, so that a correction opens with it. */
    typed: json("typed").notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.actId, t.row] }),
    ...areJson("sheet_rows", t.typed),
    ...areFilled("sheet_rows", t.digest, t.tubeId),
    // query: was this row brought in before
    index("sheet_rows_by_digest").on(t.digest, t.tubeId),
  ],
);
