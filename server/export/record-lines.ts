import { recordCounts, recordRows } from "#db/queries/record-rows.ts";
import { type RecordTableName, recordTableNames } from "#db/record-tables.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { FILE_END, HEAD_END, RECORD_FORMAT, RECORD_VERSION } from "#server/export/record-head.ts";
import { release } from "#server/release.ts";

function headLine(db: Database): string {
  const exportedAt = new Date(now(db)).toISOString();
  const head = {
    format: RECORD_FORMAT,
    version: RECORD_VERSION,
    release,
    exportedAt,
    rows: recordCounts(db),
  };
  return `${JSON.stringify(head).slice(0, -1)}${HEAD_END}\n`;
}

/** A table: its name, a row a line, its end. A comma stands behind every row but the last. */
function* tableLines(db: Database, name: RecordTableName): Generator<string> {
  yield `"${name}":[\n`;
  let row: string | null = null;
  for (const next of recordRows(db, name)) {
    if (row !== null) yield `${row},\n`;
    row = JSON.stringify(next);
  }
  if (row !== null) yield `${row}\n`;
  yield name === recordTableNames.at(-1) ? "]\n" : "],\n";
}

/**
 * The whole record as one JSON value with a row a line, so that it can be written and read in pieces. The same state gives the
 * same lines but for `exportedAt` in the first. Read it from a snapshot: nothing may be written meanwhile.
 */
export function* recordLines(db: Database): Generator<string> {
  yield headLine(db);
  for (const name of recordTableNames) yield* tableLines(db, name);
  yield `${FILE_END}\n`;
}
