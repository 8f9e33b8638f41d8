import type { LogRow } from "#db/queries/readings.ts";
import { readingEntry } from "#server/output/stored-reading.ts";
import type { Reading } from "#shared/output/reading.ts";
import { type ReadingEntry, standingReadings } from "#shared/output/reading-log.ts";

/** The rows of a tube's log as its entries, in the order in which they were recorded. */
export function entriesOf(rows: readonly LogRow[]): ReadingEntry[] {
  const inOrder = rows.toSorted((a, b) => a.recordedAt - b.recordedAt);
  return inOrder.map((row, index) => readingEntry(row, index + 1));
}

/** Of the rows of a tube's log the readings that count: without those that were voided, each as it was last corrected. */
export const standingOf = (rows: readonly LogRow[]): Reading[] => standingReadings(entriesOf(rows));
