import type { ReadingRow } from "#db/queries/readings.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { ReadingEntry } from "#shared/output/reading-log.ts";
import { readingSchema } from "#shared/output/reading-schema.ts";
import { known } from "#shared/tube/certainty.ts";

/** In which act, of which patient, by whom and when a row of the log is written. */
export type LoggedBy = Pick<ReadingRow, "patientId" | "actId" | "recordedAt" | "recordedBy">;

type Amends = { readonly replaces: string; readonly reason: string } | null;

const flushUl = ({ flushGiven }: Reading): number | null =>
  flushGiven === "not recorded" ? null : flushGiven === "none" ? 0 : flushGiven.ul;

/** A row of the log that records a reading, or replaces one. */
export function readingRow(reading: Reading, by: LoggedBy, amends: Amends = null): ReadingRow {
  return {
    ...by,
    id: reading.id,
    tubeId: reading.tubeId,
    fromAt: reading.from === "since last emptying" ? null : reading.from,
    toAt: reading.to,
    zone: reading.zone,
    grossUl: known(reading.gross) ?? null,
    basis: reading.basis,
    flushGivenUl: flushUl(reading),
    payload: { reading, reason: amends?.reason ?? null },
    replaces: amends?.replaces ?? null,
    voided: false,
  };
}

/** A row of the log that says that another does not count. */
export const voidingRow = (
  id: string,
  voided: ReadingRow,
  by: LoggedBy & { readonly reason: string },
): ReadingRow => ({
  ...voided,
  patientId: by.patientId,
  actId: by.actId,
  recordedAt: by.recordedAt,
  recordedBy: by.recordedBy,
  id,
  payload: { reason: by.reason },
  replaces: voided.id,
  voided: true,
});

/** A stored row as an entry of the log; `seq` is its place in the order of recording. */
export function readingEntry(
  row: Pick<ReadingRow, "id" | "payload" | "replaces" | "voided">,
  seq: number,
): ReadingEntry {
  const stored = row.payload as { readonly reading?: unknown; readonly reason: string | null };
  const reason = stored.reason ?? "";
  if (row.voided && row.replaces !== null)
    return { act: "voided", seq, id: row.id, replaces: row.replaces, reason };
  const reading = readingSchema.parse(stored.reading);
  if (row.replaces === null) return { act: "recorded", seq, reading };
  return { act: "replaced", seq, reading, replaces: row.replaces, reason };
}
