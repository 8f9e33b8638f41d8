import { addReading, type ReadingRow } from "#db/queries/readings.ts";
import type { Tx } from "#db/transaction.ts";
import { type LoggedBy, readingEntry } from "#server/output/stored-reading.ts";
import { append } from "#server/record/append.ts";
import { type ReadingEntry, standingReadings } from "#shared/output/reading-log.ts";

/** By whom rows are added to which tube's log, and what that log held before. */
export type Logging = LoggedBy & { readonly tubeId: string; readonly entries: readonly ReadingEntry[] };

/** Adds rows of one act to the log, then computes what they open or answer: an alarm stands with the reading that raised it. */
export function logReadings(tx: Tx, rows: readonly ReadingRow[], by: Logging): void {
  for (const row of rows) addReading(tx, row);
  const { patientId, actId, recordedBy: staffId, recordedAt: at, tubeId, entries } = by;
  const added = rows.map((row, index) => readingEntry(row, entries.length + index + 1));
  const standing = standingReadings([...entries, ...added]);
  append(tx, { patientId, actId, staffId, at, standing: { tubeId, readings: standing } }, []);
}
