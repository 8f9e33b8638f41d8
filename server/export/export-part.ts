import type { Database } from "#db/sqlite.ts";
import { csvLines } from "#server/export/csv/csv-table.ts";
import { entriesTable } from "#server/export/csv/entries-table.ts";
import { patientsTable } from "#server/export/csv/patients-table.ts";
import { readingsTable } from "#server/export/csv/readings-table.ts";
import { shelfTable } from "#server/export/csv/shelf-table.ts";
import { stepsTable } from "#server/export/csv/steps-table.ts";
import { tubesTable } from "#server/export/csv/tubes-table.ts";
import { recordLines } from "#server/export/record-lines.ts";
import type { ExportPart } from "#shared/words/exports.ts";

/** How each file of an export is made. */
const lines = {
  "record.json": recordLines,
  "patients.csv": (db) => csvLines(patientsTable, db),
  "tubes.csv": (db) => csvLines(tubesTable, db),
  "steps.csv": (db) => csvLines(stepsTable, db),
  "entries.csv": (db) => csvLines(entriesTable, db),
  "shelf.csv": (db) => csvLines(shelfTable, db),
  "readings.csv": (db) => csvLines(readingsTable, db),
} as const satisfies Record<ExportPart, (db: Database) => Iterable<string>>;

const PIECE = 1 << 16;

/** One file of an export in pieces of some 64 KiB, so that memory stays flat however long it gets. Read it from a snapshot. */
export function* exportPieces(db: Database, part: ExportPart): Generator<Buffer> {
  let text = "";
  for (const line of lines[part](db)) {
    text += line;
    if (text.length < PIECE) continue;
    yield Buffer.from(text);
    text = "";
  }
  if (text !== "") yield Buffer.from(text);
}
