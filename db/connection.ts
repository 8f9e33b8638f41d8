import { existsSync, statSync } from "node:fs";
import Sqlite from "better-sqlite3";
import { ensureEventKinds } from "#db/queries/event-kinds.ts";
import { connect, type Database } from "#db/sqlite.ts";
import { standingOf } from "#db/standing.ts";
import { inTransaction } from "#db/transaction.ts";
import type { RefusalCode } from "#shared/errors/codes.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";

/** What the driver says, in our words; undefined for what a caller cannot mend. */
function codeOf(error: unknown): RefusalCode | undefined {
  if (!(error instanceof Sqlite.SqliteError)) return undefined;
  if (error.code === "SQLITE_NOTADB") return "database-not-one";
  if (error.code.startsWith("SQLITE_CORRUPT")) return "database-damaged";
  if (error.code.startsWith("SQLITE_READONLY")) return "database-read-only";
  if (error.code.startsWith("SQLITE_CANTOPEN")) return "database-read-only";
  if (error.code.startsWith("SQLITE_BUSY")) return "database-busy";
  return undefined;
}

/** Runs what opens or changes a database file; errors of the file become refusals that say what to mend. */
export function naming<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const code = codeOf(error);
    throw code === undefined ? error : new DomainError({ code, args: { file } });
  }
}

/** The first write is made now: a file that cannot be written is found at the start, not at the first save. */
const bringKinds = (db: Database): void => inTransaction(db, (tx) => ensureEventKinds(tx, eventKinds));

function refuseUnlessCurrent(file: string, { sqlite }: Database): void {
  const standing = standingOf(sqlite);
  switch (standing) {
    case "current":
      return;
    case "empty":
    case "older":
      throw new DomainError({ code: "database-older", args: { file } });
    case "newer":
      throw new DomainError({ code: "database-newer", args: { file } });
    case "foreign":
      throw new DomainError({ code: "database-not-one", args: { file } });
  }
}

/**
 * The clinic's database, ready to read and write. Throws a DomainError for a file that is missing, no database, of
 * another program, damaged, read-only, older than this code (migrate it first) or newer.
 */
export function openDatabase(file: string): Database {
  if (!existsSync(file)) throw new DomainError({ code: "database-missing", args: { file } });
  if (!statSync(file).isFile()) throw new DomainError({ code: "database-not-one", args: { file } });
  return naming(file, () => {
    const db = connect(file);
    try {
      refuseUnlessCurrent(file, db);
      bringKinds(db);
      return db;
    } catch (error) {
      db.sqlite.close();
      throw error;
    }
  });
}
