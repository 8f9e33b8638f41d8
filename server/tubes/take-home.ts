import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";

/**
 * What stands on a paper that a patient takes home: who is rung, and the clinic's rows of what is told and done as they are now. No
 * date is counted from them, so that the version a clock is pinned to is not asked.
 */
export function takeHome(db: Database) {
  const { name, phone } = clinicOf(db);
  const { approved, redFlags, tubeOut, outputRows } = viewProtocol(db).protocol;
  return { clinic: { name, phone }, approved, redFlags, tubeOut, output: outputRows };
}
