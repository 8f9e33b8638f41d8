import { existsSync, rmSync } from "node:fs";
import { openDatabase } from "#db/connection.ts";
import { migrateFile } from "#db/migrate.ts";
import { fileLines } from "#server/export/file-lines.ts";
import { type Imported, importRecord } from "#server/export/import-record.ts";

/** A database file, and the file of the whole record that is to become it. */
export type Bringing = { readonly database: string; readonly file: string };

/**
 * Brings a whole record into a database file, which is made where there is none. Throws what `importRecord` and `openDatabase`
 * throw; a file that it made is gone then.
 */
export function importRecordFile({ database, file }: Bringing): Imported {
  const isNew = !existsSync(database);
  if (isNew) migrateFile(database);
  const db = openDatabase(database);
  let isDone = false;
  try {
    const imported = importRecord(db, { file, lines: fileLines(file) });
    isDone = true;
    return imported;
  } finally {
    db.sqlite.close();
    if (isNew && !isDone)
      for (const end of ["", "-wal", "-shm"]) rmSync(`${database}${end}`, { force: true });
  }
}
