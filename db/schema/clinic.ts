import { sql } from "drizzle-orm";
import { check, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areFilled, areFlags, flag } from "#db/schema/columns.ts";
import type { Zone } from "#shared/day/instant.ts";

/** The one clinic of this database. Only a demo may hold a clock that is ahead of the real one. */
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
