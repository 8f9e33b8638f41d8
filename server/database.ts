import { openDatabase } from "#db/connection.ts";
import type { Database } from "#db/sqlite.ts";
import { readEnv } from "#server/env.ts";

let open: Database | undefined;

/** The clinic's database of this process, opened when first asked for and closed when the process ends. Throws as openDatabase does. */
export function database(): Database {
  if (open === undefined) {
    const db = openDatabase(readEnv(process.env).DATABASE_FILE);
    process.once("exit", () => db.sqlite.close());
    open = db;
  }
  return open;
}
