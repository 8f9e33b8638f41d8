import { sql } from "drizzle-orm";
import { check, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areDays, areJson, dayText, id, instant, json } from "#db/schema/columns.ts";
import { staff } from "#db/schema/staff.ts";

/** The clinic's rows. Append only: a change is a next version. Without approver and day the rows are an EXAMPLE. */
export const protocolVersions = sqliteTable(
  "protocol_versions",
  {
    version: integer("version").primaryKey(),
    rows: json("rows").notNull(),
    note: text("note").notNull(),
    approvedBy: id("approved_by").references(() => staff.id, { onDelete: "restrict" }),
    approvedOn: dayText("approved_on"),
    createdAt: instant("created_at").notNull(),
  },
  (t) => [
    check("protocol_versions_start_at_1", sql`${t.version} >= 1`),
    check("protocol_versions_approval_whole", sql`(${t.approvedBy} is null) = (${t.approvedOn} is null)`),
    ...areDays("protocol_versions", t.approvedOn),
    ...areJson("protocol_versions", t.rows),
  ],
);

/** Open weekdays and closures. Append only, like the protocol. */
export const calendarVersions = sqliteTable(
  "calendar_versions",
  {
    version: integer("version").primaryKey(),
    content: json("content").notNull(),
    createdAt: instant("created_at").notNull(),
  },
  (t) => [
    check("calendar_versions_start_at_1", sql`${t.version} >= 1`),
    ...areJson("calendar_versions", t.content),
  ],
);
