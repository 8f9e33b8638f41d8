import { type EventRow, eventsOfAct } from "#db/queries/events.ts";
import { patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { whenUnknown } from "#shared/day/when.ts";
import type { Command } from "#shared/tube/decide.ts";

/** Why an entry no longer counts that was taken back with its act. */
export const UNDONE = "undone";

const voiding = (eventId: string): Command => ({
  eventId: newId(),
  kind: "voided",
  tubes: [],
  when: whenUnknown,
  time: null,
  daySequence: 0,
  payload: { reason: UNDONE, wrongPatient: false },
  amends: eventId,
  lastSeen: Number.MAX_SAFE_INTEGER,
});

/** What takes back the entries of an act, record by record; the newest first, so that what an entry made possible goes before it. */
export function voidingsOfAct(db: Database, actId: string): ReadonlyMap<string, readonly Command[]> {
  // What was recorded in a record that was joined into another since is undone there.
  const recordOf = ({ patientId }: EventRow): string => patientById(db, patientId)?.joinedInto ?? patientId;
  const events = eventsOfAct(db, actId).toReversed();
  const records = [...new Set(events.map(recordOf))];
  const voidingsIn = (record: string) =>
    events.filter((event) => recordOf(event) === record).map(({ id }) => voiding(id));
  return new Map(records.map((record) => [record, voidingsIn(record)]));
}
