import { sql } from "drizzle-orm";
import { type AnySQLiteColumn, check, index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { areFilled, areFlags, areJson, flag, id, instant, json } from "#db/schema/columns.ts";
import { patients } from "#db/schema/patients.ts";
import { staff } from "#db/schema/staff.ts";
import type { Zone } from "#shared/day/instant.ts";

/** Output as read. Append only: a correction is a row that replaces another. Volumes are whole microlitres. */
export const readings = sqliteTable(
  "readings",
  {
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    tubeId: id("tube_id").notNull(),
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    fromAt: instant("from_at"),
    toAt: instant("to_at").notNull(),
    zone: text("zone").$type<Zone>().notNull(),
    /** Null when something came and nobody knows how much: unknown is not zero. */
    grossUl: integer("gross_ul"),
    basis: text("basis").notNull(),
    /** What was given, not what was ordered; null when not recorded. */
    flushGivenUl: integer("flush_given_ul"),
    payload: json("payload").notNull(),
    replaces: id("replaces").references((): AnySQLiteColumn => readings.id, { onDelete: "restrict" }),
    /** 1: this row says only that the replaced one does not count. */
    voided: flag("voided").notNull(),
    recordedAt: instant("recorded_at").notNull(),
    recordedBy: id("recorded_by")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
  },
  (t) => [
    check("readings_interval_in_order", sql`${t.fromAt} is null or ${t.fromAt} < ${t.toAt}`),
    check("readings_flush_not_negative", sql`${t.flushGivenUl} is null or ${t.flushGivenUl} >= 0`),
    check("readings_void_names_one", sql`${t.voided} = 0 or ${t.replaces} is not null`),
    check("readings_replaces_another", sql`${t.replaces} is null or ${t.replaces} <> ${t.id}`),
    ...areFilled("readings", t.id, t.tubeId, t.zone, t.basis),
    ...areFlags("readings", t.voided),
    ...areJson("readings", t.payload),
    // query: readings of one tube, by the end of their interval
    index("readings_by_tube").on(t.tubeId, t.toAt),
    // query: readings of one act (undo)
    index("readings_by_act").on(t.actId),
    // query: what replaces this reading
    index("readings_by_replaced").on(t.replaces),
  ],
);
