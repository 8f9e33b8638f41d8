import type { LogRow } from "#db/queries/readings.ts";
import { readingEntry } from "#server/output/stored-reading.ts";
import type { Reading } from "#shared/output/reading.ts";
import { standingReadings } from "#shared/output/reading-log.ts";

/** Of the rows of a tube's log the readings that count: without those that were voided, each as it was last corrected. */
export function standingOf(rows: readonly LogRow[]): Reading[] {
  const inOrder = rows.toSorted((a, b) => a.recordedAt - b.recordedAt);
  return standingReadings(inOrder.map((row, index) => readingEntry(row, index + 1)));
}
