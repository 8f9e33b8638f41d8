import { and, asc, eq, sql } from "drizzle-orm";
import { acts } from "#db/schema/acts.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions } from "#db/schema/versions.ts";
import type { Database } from "#db/sqlite.ts";

/** The command of every act that changes the calendar. Its result names the version, and whether the act made it. */
export const CALENDAR_COMMAND = "calendar: change";

/** Versions of the calendar with who made them, the first on top; nobody made the one that came with the clinic. */
export const calendarHistory = (db: Database) =>
  db.orm
    .select({ version: calendarVersions.version, at: calendarVersions.createdAt, who: staff.fullName })
    .from(calendarVersions)
    // A version is written at the instant of its act, by which acts are found without reading all of them.
    .leftJoin(
      acts,
      and(
        eq(acts.recordedAt, calendarVersions.createdAt),
        eq(acts.command, CALENDAR_COMMAND),
        sql`json_extract(${acts.result}, '$.version') = ${calendarVersions.version}`,
        sql`json_extract(${acts.result}, '$.changed')`,
      ),
    )
    .leftJoin(staff, eq(staff.id, acts.staffId))
    .orderBy(asc(calendarVersions.version))
    .all();
