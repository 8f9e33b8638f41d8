import { sql } from "drizzle-orm";
import { check, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areDays, areFlags, areJson, dayText, flag, id, instant, json } from "#db/schema/columns.ts";
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
    /** Who changed the draft that it was, as ids of staff; null where no draft came before it. */
    draftedBy: json("drafted_by").$type<readonly string[]>(),
    /** Its approver had changed the draft too, and no other approver had an account. */
    approvedAlone: flag("approved_alone"),
  },
  (t) => [
    check("protocol_versions_start_at_1", sql`${t.version} >= 1`),
    check("protocol_versions_approval_whole", sql`(${t.approvedBy} is null) = (${t.approvedOn} is null)`),
    ...areDays("protocol_versions", t.approvedOn),
    ...areFlags("protocol_versions", t.approvedAlone),
    ...areJson("protocol_versions", t.rows, t.draftedBy),
  ],
);

/** The one draft of the clinic's rows that nobody has signed yet. Disposable: what is signed is a version. */
export const protocolDraft = sqliteTable(
  "protocol_draft",
  {
    id: integer("id").primaryKey(),
    /** The version that it was begun from. */
    base: integer("base")
      .notNull()
      .references(() => protocolVersions.version, { onDelete: "restrict" }),
    /** One more with each change: whoever changes or signs says which one they saw. */
    revision: integer("revision").notNull(),
    rows: json("rows").notNull(),
    note: text("note").notNull(),
    authors: json("authors").$type<readonly string[]>().notNull(),
    updatedAt: instant("updated_at").notNull(),
  },
  (t) => [check("protocol_draft_is_one", sql`${t.id} = 1`), ...areJson("protocol_draft", t.rows, t.authors)],
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

/** The clinic's rooms, all of them in each version. Append only; a clinic that never had a room has none. */
export const roomVersions = sqliteTable(
  "room_versions",
  {
    version: integer("version").primaryKey(),
    content: json("content").notNull(),
    createdAt: instant("created_at").notNull(),
  },
  (t) => [check("room_versions_start_at_1", sql`${t.version} >= 1`), ...areJson("room_versions", t.content)],
);
