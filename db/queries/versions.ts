import { desc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, protocolVersions, roomVersions } from "#db/schema/versions.ts";
import type { Database } from "#db/sqlite.ts";

const protocol = prepared((orm) =>
  orm
    .select({
      version: protocolVersions.version,
      rows: protocolVersions.rows,
      approvedBy: staff.fullName,
      approvedOn: protocolVersions.approvedOn,
    })
    .from(protocolVersions)
    .leftJoin(staff, eq(staff.id, protocolVersions.approvedBy))
    .where(eq(protocolVersions.version, sql.placeholder("version")))
    .prepare(),
);

const calendar = prepared((orm) =>
  orm
    .select()
    .from(calendarVersions)
    .where(eq(calendarVersions.version, sql.placeholder("version")))
    .prepare(),
);

const rooms = prepared((orm) =>
  orm
    .select()
    .from(roomVersions)
    .where(eq(roomVersions.version, sql.placeholder("version")))
    .prepare(),
);

const newestProtocol = prepared((orm) =>
  orm
    .select({ version: protocolVersions.version })
    .from(protocolVersions)
    .orderBy(desc(protocolVersions.version))
    .limit(1)
    .prepare(),
);

const newestCalendar = prepared((orm) =>
  orm
    .select({ version: calendarVersions.version })
    .from(calendarVersions)
    .orderBy(desc(calendarVersions.version))
    .limit(1)
    .prepare(),
);

const newestRooms = prepared((orm) =>
  orm
    .select({ version: roomVersions.version })
    .from(roomVersions)
    .orderBy(desc(roomVersions.version))
    .limit(1)
    .prepare(),
);

export const protocolRow = (db: Database, version: number) => protocol(db).get({ version });
export const calendarRow = (db: Database, version: number) => calendar(db).get({ version });

export const roomsRow = (db: Database, version: number) => rooms(db).get({ version });

/** The version of the rooms that stands; 0 of a clinic that never had a room. */
export const newestRoomsVersion = (db: Database): number => newestRooms(db).get()?.version ?? 0;

/** The versions that a clock starting now is pinned to; null before the clinic has both. */
export function newestVersions(db: Database): { protocol: number; calendar: number } | null {
  const protocolNow = newestProtocol(db).get()?.version;
  const calendarNow = newestCalendar(db).get()?.version;
  if (protocolNow === undefined || calendarNow === undefined) return null;
  return { protocol: protocolNow, calendar: calendarNow };
}

export const addProtocolVersion = inserter(protocolVersions);
export const addCalendarVersion = inserter(calendarVersions);
export const addRoomsVersion = inserter(roomVersions);
