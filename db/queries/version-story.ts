import { and, asc, eq, sql } from "drizzle-orm";
import { acts } from "#db/schema/acts.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, roomVersions } from "#db/schema/versions.ts";
import type { Database } from "#db/sqlite.ts";

/** The command of every act that changes the calendar. Its result names the version, and whether the act made it. */
export const CALENDAR_COMMAND = "calendar: change";
/** The same of the clinic's rooms. */
export const ROOMS_COMMAND = "rooms: change";

type VersionTable = typeof calendarVersions | typeof roomVersions;

const historyOf = (table: VersionTable, command: string) => (db: Database) =>
  db.orm
    .select({ version: table.version, at: table.createdAt, who: staff.fullName })
    .from(table)
    // A version is written at the instant of its act, by which acts are found without reading all of them.
    .leftJoin(
      acts,
      and(
        eq(acts.recordedAt, table.createdAt),
        eq(acts.command, command),
        sql`json_extract(${acts.result}, '$.version') = ${table.version}`,
        sql`json_extract(${acts.result}, '$.changed')`,
      ),
    )
    .leftJoin(staff, eq(staff.id, acts.staffId))
    .orderBy(asc(table.version))
    .all();

/** Versions of the calendar with who made them, the first on top; nobody made the one that came with the clinic. */
export const calendarHistory = historyOf(calendarVersions, CALENDAR_COMMAND);
/** Versions of the rooms, told alike. */
export const roomsHistory = historyOf(roomVersions, ROOMS_COMMAND);
