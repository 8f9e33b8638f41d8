import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { calendarOf, protocolOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** The clinic's table and calendar that a clock starting now is pinned to. Throws `no-pins` before the clinic has both. */
export function viewProtocol(db: Database) {
  const versions = newestVersions(db);
  if (versions === null) throw new DomainError({ code: "no-pins" });
  return { protocol: protocolOf(db, versions.protocol), calendar: calendarOf(db, versions.calendar) };
}
