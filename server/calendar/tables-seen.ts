import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** The tables that stand, where their calendar is the version that a page showed. Throws `calendar-changed`. */
export function tablesSeen(db: Database, seen: number) {
  const tables = viewProtocol(db);
  if (tables.calendar.version !== seen) throw new DomainError({ code: "calendar-changed" });
  return tables;
}
