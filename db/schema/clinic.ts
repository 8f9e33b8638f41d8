import { sql } from "drizzle-orm";
import { check, index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { areFilled, areFlags, areJson, flag, id, instant, json } from "#db/schema/columns.ts";
import type { Zone } from "#shared/day/instant.ts";

/** The one clinic of this database. Mutable, with its history in `clinic_changes`. Only a demo may hold a clock that is ahead of the real one. */
export const clinic = sqliteTable(
  "clinic",
  {
    id: integer("id").primaryKey(),
    name: text("name").notNull(),
    zone: text("zone").$type<Zone>().notNull(),
    phone: text("phone").notNull(),
    isDemo: flag("is_demo").notNull(),
    clockOffsetMs: integer("clock_offset_ms").notNull().default(0),
  },
  (t) => [
    check("clinic_one_row", sql`${t.id} = 1`),
    check("clinic_real_clock", sql`${t.isDemo} = 1 or ${t.clockOffsetMs} = 0`),
    ...areFilled("clinic", t.name, t.zone),
    ...areFlags("clinic", t.isDemo),
  ],
);

/** What the clinic says of itself on its papers, as a change keeps it. */
export type ClinicSettings = { readonly phone: string };

/** Append only: what the clinic's settings were before and after each change, and whose act that was. */
export const clinicChanges = sqliteTable(
  "clinic_changes",
  {
    id: id("id").primaryKey(),
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    before: json("before").$type<ClinicSettings>().notNull(),
    after: json("after").$type<ClinicSettings>().notNull(),
    at: instant("at").notNull(),
  },
  (t) => [
    ...areJson("clinic_changes", t.before, t.after),
    // query: changes, newest first
    index("clinic_changes_by_time").on(t.at),
  ],
);
