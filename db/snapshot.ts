import { openDatabase } from "#db/connection.ts";
import type { Database } from "#db/sqlite.ts";

/**
 * A file as it stands at this moment, on a connection of its own that only reads: however long the reading takes, others go on
 * writing and none of it is seen. Close it when done. Throws as `openDatabase` does.
 */
export function snapshotOf(file: string): Database {
  const db = openDatabase(file);
  db.sqlite.pragma("query_only = ON");
  db.sqlite.exec("begin");
  // The moment is that of the first read.
  db.sqlite.prepare("select count(*) from clinic").get();
  return db;
}
