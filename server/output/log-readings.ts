import { addReading, type ReadingRow } from "#db/queries/readings.ts";
import type { Tx } from "#db/transaction.ts";
import type { LoggedBy } from "#server/output/stored-reading.ts";
import { append } from "#server/record/append.ts";

/** Adds rows of one act to the log, then computes what they open or answer: an alarm stands with the reading that raised it. */
export function logReadings(tx: Tx, rows: readonly ReadingRow[], by: LoggedBy): void {
  for (const row of rows) addReading(tx, row);
  append(tx, { patientId: by.patientId, actId: by.actId, staffId: by.recordedBy, at: by.recordedAt }, []);
}
