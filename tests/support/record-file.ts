import { compareProjections } from "#db/compare-projections.ts";
import type { Database } from "#db/sqlite.ts";
import { importRecord } from "#server/export/import-record.ts";
import { recordLines } from "#server/export/record-lines.ts";
import { emptyDatabase } from "#tests/support/database.ts";

/** The lines of an export without their ends. */
export const exportedLines = (db: Database): string[] =>
  [...recordLines(db)].map((line) => line.replace(/\n$/, ""));

/** Brings lines into an empty database. */
export const bringIn = (db: Database, lines: readonly (string | null)[]) =>
  importRecord(db, { file: "record.json", lines });

/** The first line but for the time stamp, and every other. */
export const withoutStamp = ([head = "", ...rest]: readonly string[]): string[] => [
  head.replace(/"exportedAt":"[^"]+"/, ""),
  ...rest,
];

/** What a second database makes of an export: its own export, and where its projections are not the first one's. */
export function roundTrip(db: Database) {
  using second = emptyDatabase();
  const sent = exportedLines(db);
  const imported = bringIn(second, sent);
  const differences = compareProjections(db, second);
  return { sent: withoutStamp(sent), back: withoutStamp(exportedLines(second)), imported, differences };
}
